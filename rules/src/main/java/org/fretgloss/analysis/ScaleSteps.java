package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;

/** Measures pitch in steps of a scale, so that a line that is moved along the scale keeps its shape. */
final class ScaleSteps {

    private static final int OCTAVE = 12;

    private final int tonic;

    /** By semitones above the tonic: two for each scale step up to there, one more for a note between two steps. */
    private final List<Integer> halfSteps = new ArrayList<>();

    private final int octave;

    ScaleSteps(HomeScale home) {
        this.tonic = home.tonic().chroma();
        int steps = 0;
        for (int semitones = 0; semitones < OCTAVE; semitones++) {
            boolean inScale = home.contains(tonic + semitones);
            steps += inScale ? 2 : 0;
            halfSteps.add(inScale ? steps : steps + 1);
        }
        this.octave = steps;
    }

    /** Half steps of the scale above the tonic of MIDI octave 0; even for a note of the scale, odd for one between. */
    int of(int midi) {
        int above = midi - tonic;
        return octave * Math.floorDiv(above, OCTAVE) + halfSteps.get(Math.floorMod(above, OCTAVE));
    }
}
