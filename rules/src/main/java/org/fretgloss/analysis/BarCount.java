package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Measures time in bars, for questions to which bars of all meters are alike. A bar that is shorter or longer than its
 * meter counts for as much of one as it fills. Not exact: for statistics only.
 */
final class BarCount {

    private final List<Double> starts = new ArrayList<>();

    BarCount(List<Bar> bars) {
        double start = 0;
        for (Bar bar : bars) {
            starts.add(start);
            start += inBars(bar.length(), bar);
        }
    }

    /** How many bars lie before the moment at which a note is struck. */
    double onset(Note note) {
        Bar bar = note.bar();
        return starts.get(bar.index()) + inBars(note.onset().minus(bar.start()), bar);
    }

    /** How many bars lie before the moment at which a note stops sounding. */
    double end(Note note) {
        return onset(note) + inBars(note.duration(), note.bar());
    }

    private static double inBars(Fraction quarters, Bar bar) {
        return quarters.dividedBy(bar.meter().barLength()).toDouble();
    }
}
