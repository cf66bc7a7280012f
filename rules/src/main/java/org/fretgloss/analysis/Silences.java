package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Finds where nothing sounds: between the latest end of all notes so far, in whichever voice, and the next onset. A dead
 * note is struck and ends a silence; so does a grace note, which takes no time itself.
 */
public final class Silences {

    private Silences() {}

    /** Every silence between two notes of a solo, however short, in order. */
    public static List<Silence> of(Solo solo) {
        List<Silence> silences = new ArrayList<>();
        Fraction end = Fraction.ZERO;
        for (Note note : solo.notes()) {
            if (note.index() > 0 && note.onset().isMoreThan(end)) {
                Note before = solo.notes().get(note.index() - 1);
                silences.add(new Silence(before, note, end, note.onset(), beats(solo, end, note.onset())));
            }
            end = end.max(note.end());
        }
        return silences;
    }

    /** The length of a stretch, each bar's part in that bar's own beats. */
    private static Fraction beats(Solo solo, Fraction start, Fraction end) {
        Fraction beats = Fraction.ZERO;
        Fraction from = start;
        while (from.isLessThan(end)) {
            Bar bar = solo.barAt(from);
            Fraction to = bar.end().isMoreThan(from) ? bar.end().min(end) : end;
            beats = beats.plus(to.minus(from).dividedBy(bar.meter().beatLength()));
            from = to;
        }
        return beats;
    }
}
