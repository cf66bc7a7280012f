package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fretgloss.pitch.ChordName;
import org.fretgloss.pitch.ChordSymbol;

/** Reads bars of chord names as musicians type them. */
final class ChordChart {

    private static final String REPEAT = "%";
    private static final Pattern NO_CHORD = Pattern.compile("(?i)n\\.?c\\.?");
    private static final Pattern OUTER_BAR_LINES = Pattern.compile("^[|\\s]+|[|\\s]+$");

    /** A double bar line is one bar line. */
    private static final Pattern BAR_LINE = Pattern.compile("\\|+");

    private ChordChart() {}

    /**
     * The chords of each bar; an empty place is a share of the bar without chord.
     *
     * @throws IllegalArgumentException if a bar is empty or holds what is no chord
     */
    static List<List<Optional<ChordSymbol>>> parse(String chart) {
        String inner = OUTER_BAR_LINES.matcher(chart).replaceAll("");
        if (inner.isEmpty()) {
            throw new IllegalArgumentException("there are no chords: write bars such as \"A7 | D7 | A7 | %\"");
        }
        List<List<Optional<ChordSymbol>>> bars = new ArrayList<>();
        for (String bar : BAR_LINE.split(inner, -1)) {
            bars.add(bar.trim().equals(REPEAT) ? lastOf(bars) : chordsOf(bar.trim(), bars.size() + 1));
        }
        return bars;
    }

    private static List<Optional<ChordSymbol>> lastOf(List<List<Optional<ChordSymbol>>> bars) {
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("bar 1 of the chords: % repeats the bar before, and there is none");
        }
        return bars.get(bars.size() - 1);
    }

    private static List<Optional<ChordSymbol>> chordsOf(String bar, int number) {
        if (bar.isEmpty()) {
            throw new IllegalArgumentException(
                    "bar " + number + " of the chords is empty: write a chord, % to repeat the bar before, or N.C.");
        }
        return Arrays.stream(bar.split("\\s+")).map(name -> chord(name, number)).toList();
    }

    private static Optional<ChordSymbol> chord(String name, int bar) {
        if (name.equals(REPEAT)) {
            throw new IllegalArgumentException(
                    "bar " + bar + " of the chords: % repeats a whole bar and stands in it alone");
        }
        if (NO_CHORD.matcher(name).matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ChordName.parse(name));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("bar " + bar + " of the chords: " + e.getMessage(), e);
        }
    }
}
