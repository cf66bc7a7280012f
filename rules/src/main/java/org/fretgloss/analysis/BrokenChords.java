package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;

/**
 * Tells a line that plays its chords note by note from a melody: in most of its bars, or in both halves of them, it goes
 * through three or four pitch classes, and mostly by leap. Common practice, no source; the shares were set by hand.
 */
public final class BrokenChords {

    /** Of the bars in which the line sounds. */
    private static final double MOST_BARS = 2.0 / 3;

    /** Of the moves from one pitch to another; from the 7 to the root a chord moves by step. */
    private static final double MOST_MOVES = 2.0 / 3;

    /** In semitones; what is narrower is a step. */
    private static final int NARROWEST_LEAP = 3;

    private static final int FEWEST_CHROMAS = 3;
    private static final int MOST_CHROMAS = 4;

    private static final Fraction HALF = Fraction.of(1, 2);

    private BrokenChords() {}

    /**
     * Whether a line plays broken chords.
     *
     * @param line its notes in order of onset
     * @param bars the bars upon which it is laid
     */
    public static boolean arePlayedBy(List<Accompaniment.Sounding> line, List<Bar> bars) {
        NavigableMap<Fraction, Bar> byStart = new TreeMap<>();
        bars.forEach(bar -> byStart.put(bar.start(), bar));
        Map<Bar, List<Accompaniment.Sounding>> struck = new HashMap<>();
        for (Accompaniment.Sounding note : line) {
            Map.Entry<Fraction, Bar> bar = byStart.floorEntry(note.start());
            if (bar != null) {
                struck.computeIfAbsent(bar.getValue(), unused -> new ArrayList<>())
                        .add(note);
            }
        }
        long broken = struck.entrySet().stream()
                .filter(entry -> isBroken(entry.getValue(), entry.getKey()))
                .count();
        return broken > 0 && broken >= MOST_BARS * struck.size();
    }

    private static boolean isBroken(List<Accompaniment.Sounding> struck, Bar bar) {
        Fraction middle = bar.start().plus(bar.length().times(HALF));
        Map<Boolean, List<Accompaniment.Sounding>> halves = struck.stream()
                .collect(Collectors.partitioningBy(note -> note.start().isLessThan(middle)));
        return isChord(struck) || halves.values().stream().allMatch(BrokenChords::isChord);
    }

    private static boolean isChord(List<Accompaniment.Sounding> struck) {
        long chromas = struck.stream()
                .map(note -> Math.floorMod(note.midi(), 12))
                .distinct()
                .count();
        int moves = 0;
        int leaps = 0;
        for (int i = 1; i < struck.size(); i++) {
            int semitones = Math.abs(struck.get(i).midi() - struck.get(i - 1).midi());
            moves += semitones > 0 ? 1 : 0;
            leaps += semitones >= NARROWEST_LEAP ? 1 : 0;
        }
        return chromas >= FEWEST_CHROMAS && chromas <= MOST_CHROMAS && leaps >= MOST_MOVES * moves;
    }
}
