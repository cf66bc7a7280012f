package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Note;

/**
 * Single notes that follow one another under one chord: a chord change, a rest of a beat or more, and notes struck
 * together end it.
 *
 * @param chord the chord they are heard against
 * @param notes at least one, in sounding order; grace notes and dead notes are passed over
 */
public record Stretch(ChordSymbol chord, List<Note> notes) {

    public Stretch {
        notes = List.copyOf(notes);
    }

    /** The stretches of a solo in order; none where no chord is known. */
    public static List<Stretch> of(Analysis analysis) {
        Pauses pauses = Pauses.of(analysis.silences());
        List<Stretch> stretches = new ArrayList<>();
        List<Note> current = new ArrayList<>();
        for (List<Note> moment : Melody.of(analysis.solo()).moments()) {
            boolean single = moment.size() == 1;
            Note note = moment.get(0);
            if (!single || !continues(current, note, analysis.harmony(), pauses)) {
                close(current, analysis, stretches);
            }
            if (single) {
                current.add(note);
            }
        }
        close(current, analysis, stretches);
        return stretches;
    }

    private static boolean continues(List<Note> current, Note note, Harmony harmony, Pauses pauses) {
        if (current.isEmpty()) {
            return true;
        }
        Note last = current.get(current.size() - 1);
        return harmony.isSameChord(last.onset(), note.onset()) && !pauses.between(last, note);
    }

    private static void close(List<Note> current, Analysis analysis, List<Stretch> stretches) {
        if (!current.isEmpty()) {
            analysis.chordAt(current.get(0)).ifPresent(chord -> stretches.add(new Stretch(chord, current)));
        }
        current.clear();
    }
}
