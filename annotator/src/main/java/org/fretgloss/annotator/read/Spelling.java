package org.fretgloss.annotator.read;

import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Step;

/** The names of sounding pitches: as written where that fits, else as the key signature suggests. */
final class Spelling {

    /** From the major tonic: ♭3, three fifths below it, to ♯5, eight above. */
    private static final int LOWEST_FIFTH = -3;

    private Spelling() {}

    /**
     * The written pitch moved to the MIDI number that sounds, its spelling kept.
     *
     * @param offset semitones by which written pitches stand above sounding ones here
     * @param fifths of the key signature, for a note whose written pitch does not agree with the sounding one
     */
    static Pitch of(int midi, Pitch written, int offset, int fifths) {
        PitchClass name = written.name().plus(Degree.named(-offset));
        return name.chroma() == Math.floorMod(midi, 12) ? Pitch.spelled(midi, name) : inKey(midi, fifths);
    }

    /** The pitch named as close to the key signature as can be: in C the black keys are C♯ E♭ F♯ G♯ B♭. */
    static Pitch inKey(int midi, int fifths) {
        int lowest = fifths + LOWEST_FIFTH;
        int fifth = lowest + Math.floorMod(midi * 7 - lowest, 12);
        return Pitch.spelled(midi, onLineOfFifths(fifth));
    }

    private static PitchClass onLineOfFifths(int fifths) {
        for (Step step : Step.values()) {
            if (Math.floorMod(fifths - step.fifths(), 7) == 0) {
                return new PitchClass(step, Math.floorDiv(fifths - step.fifths(), 7));
            }
        }
        throw new AssertionError("one step in seven fits");
    }
}
