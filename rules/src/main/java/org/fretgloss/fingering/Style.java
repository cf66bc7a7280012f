package org.fretgloss.fingering;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What the notes tell of how a piece is played.
 *
 * @param octaves the share of octaves among its notes struck in twos, 0 to 1
 * @param isLead whether it is a melody, one note at a time and mostly in small steps: then it is played up the neck and
 *     on the thin strings; other music accompanies, and is glad of open strings
 */
record Style(double octaves, boolean isLead) {

    /** Two-note onsets below which the share of octaves says little. */
    private static final int FEW_PAIRS = 8;

    private static final int OCTAVE = 12;

    /** Least share of single notes in a lead; the rest are double stops and unison bends. */
    private static final double SINGLE = 0.85;

    /** Least share of small steps among moves from note to note in a lead; a broken chord leaps. */
    private static final double SMALL = 0.6;

    /** The widest small step, in semitones. */
    private static final int SMALL_STEP = 4;

    static Style of(List<Onset> onsets) {
        long single = onsets.stream().filter(onset -> onset.size() == 1).count();
        return new Style(octaves(onsets), single >= SINGLE * onsets.size() && smallSteps(onsets) >= SMALL);
    }

    private static double octaves(List<Onset> onsets) {
        List<Onset> pairs = onsets.stream().filter(onset -> onset.size() == 2).toList();
        long octaves = pairs.stream()
                .filter(pair -> pair.pitches().get(1) - pair.pitches().get(0) == OCTAVE)
                .count();
        return (double) octaves / Math.max(FEW_PAIRS, pairs.size());
    }

    private static double smallSteps(List<Onset> onsets) {
        List<Integer> steps = IntStream.range(1, onsets.size())
                .filter(i -> onsets.get(i - 1).size() == 1 && onsets.get(i).size() == 1)
                .map(i -> Math.abs(onsets.get(i).pitches().get(0)
                        - onsets.get(i - 1).pitches().get(0)))
                .boxed()
                .toList();
        long small = steps.stream().filter(step -> step <= SMALL_STEP).count();
        return steps.isEmpty() ? 0 : (double) small / steps.size();
    }
}
