package org.fretgloss.analysis;

import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Scale;

/**
 * A tonic and a scale: A minor pentatonic.
 *
 * @param tonic the spelled tonic
 * @param scale the scale upon it
 */
public record HomeScale(PitchClass tonic, Scale scale) {

    /** Whether the scale holds a note, octaves apart. */
    public boolean contains(int midi) {
        return scale.contains(midi - tonic.chroma());
    }

    /** A note's name against the tonic. */
    public Degree degreeOf(int midi) {
        return scale.degreeAt(midi - tonic.chroma());
    }

    /** A sounding note spelled as its degree: over A, MIDI 61 is C♯4 and never D♭4. */
    public Pitch spell(int midi) {
        return Pitch.spelled(midi, tonic.plus(degreeOf(midi)));
    }

    /** The tonic of the minor pentatonic whose boxes the scale is fingered in. */
    public int boxTonicChroma() {
        return Math.floorMod(tonic.chroma() - (scale.hasMajorThird() ? 3 : 0), 12);
    }

    /** "A minor pentatonic". */
    @Override
    public String toString() {
        return tonic + " " + scale;
    }
}
