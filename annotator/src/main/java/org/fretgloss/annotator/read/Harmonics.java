package org.fretgloss.annotator.read;

import java.util.Map;

/**
 * What harmonics sound like. Touched at a half, third, quarter, fifth or sixth of its length a string sounds the second to
 * the sixth partial (physics of the ideal string; the fret nearest to each node by equal temperament).
 */
final class Harmonics {

    /** By fret, semitones above the open string. */
    private static final Map<Integer, Integer> NATURAL = Map.ofEntries(
            Map.entry(12, 12),
            Map.entry(7, 19),
            Map.entry(19, 19),
            Map.entry(5, 24),
            Map.entry(24, 24),
            Map.entry(4, 28),
            Map.entry(9, 28),
            Map.entry(16, 28),
            Map.entry(28, 28),
            Map.entry(3, 31),
            Map.entry(31, 31));

    private static final int OCTAVE = 12;

    private Harmonics() {}

    /**
     * Semitones above the open string at which a harmonic sounds.
     *
     * @param fret where the string is touched (natural) or fretted (artificial: an octave above is heard)
     */
    static int semitones(HarmonicTone tone, int fret) {
        return tone == HarmonicTone.FRETTED ? fret + OCTAVE : NATURAL.getOrDefault(fret, fret);
    }
}
