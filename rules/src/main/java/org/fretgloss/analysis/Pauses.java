package org.fretgloss.analysis;

import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/** The silences of a beat or more, across which the ear no longer ties one note to the next. */
public final class Pauses {

    private final NavigableSet<Fraction> ends;

    private Pauses(NavigableSet<Fraction> ends) {
        this.ends = ends;
    }

    public static Pauses of(List<Silence> silences) {
        NavigableSet<Fraction> ends = new TreeSet<>();
        silences.stream()
                .filter(silence -> !silence.beats().isLessThan(Fraction.ONE))
                .forEach(silence -> ends.add(silence.end()));
        return new Pauses(ends);
    }

    /** Whether one lies between a note and a later one. */
    public boolean between(Note earlier, Note later) {
        Fraction end = ends.higher(earlier.onset());
        return end != null && !end.isMoreThan(later.onset());
    }
}
