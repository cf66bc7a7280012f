package org.fretgloss.analysis;

import org.fretgloss.pitch.Scale;

/**
 * The two colours a solo can have on its tonic, with the pentatonic at the heart of each, and how much a note on each
 * degree speaks for a tonic of that colour.
 *
 * <p>The weights (by semitones above the tonic, 1 for the tonic itself) were set by hand from what teachers call strong
 * and weak notes of lead playing: chord tones of the tonic first, then the rest of the pentatonic, then the usual added
 * notes. Common practice, no source.
 */
enum Mode {
    //                             1    ♭2   2     ♭3    3     4     ♭5    5     ♭6    6     ♭7    7
    MINOR(Scale.MINOR_PENTATONIC, 1.0, 0.0, 0.40, 0.75, 0.30, 0.60, 0.30, 0.75, 0.25, 0.35, 0.65, 0.10),
    MAJOR(Scale.MAJOR_PENTATONIC, 1.0, 0.0, 0.60, 0.30, 0.75, 0.40, 0.10, 0.75, 0.05, 0.65, 0.30, 0.35);

    private final Scale pentatonic;
    private final double[] weights;

    Mode(Scale pentatonic, double... weights) {
        this.pentatonic = pentatonic;
        this.weights = weights;
    }

    Scale pentatonic() {
        return pentatonic;
    }

    /** How much a note some semitones above the tonic speaks for it, 0 to 1. */
    double weight(int semitonesAboveTonic) {
        return weights[Math.floorMod(semitonesAboveTonic, 12)];
    }
}
