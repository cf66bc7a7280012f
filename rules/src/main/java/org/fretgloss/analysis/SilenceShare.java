package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/** How much of a solo is silence. */
public final class SilenceShare {

    private SilenceShare() {}

    /**
     * The time in which nothing sounds between the first onset and the last end, over that time: 0 to 1, and 0 where
     * there are no notes.
     *
     * @param silences every silence of the solo
     */
    public static Fraction of(Solo solo, List<Silence> silences) {
        if (solo.notes().isEmpty()) {
            return Fraction.ZERO;
        }
        Fraction start = solo.notes().get(0).onset();
        Fraction end = solo.notes().stream().map(Note::end).reduce(start, Fraction::max);
        if (start.equals(end)) {
            return Fraction.ZERO;
        }
        return silences.stream()
                .map(silence -> silence.end().minus(silence.start()))
                .reduce(Fraction.ZERO, Fraction::plus)
                .dividedBy(end.minus(start));
    }
}
