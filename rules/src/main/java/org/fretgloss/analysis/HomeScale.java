package org.fretgloss.analysis;

import java.util.Arrays;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Scale;
import org.fretgloss.pitch.UnknownNameException;

/**
 * A tonic and a scale: A minor pentatonic.
 *
 * @param tonic the spelled tonic
 * @param scale the scale upon it
 */
public record HomeScale(PitchClass tonic, Scale scale) {

    /** A minor third below the tonic, an octave higher. */
    private static final Degree SIXTH = new Degree(6, 0);

    /**
     * Reads "A minor pentatonic", "C# dorian", "Bb blues".
     *
     * @throws UnknownNameException if there is no such scale
     * @throws IllegalArgumentException if the first word is no note name
     */
    public static HomeScale parse(String text) {
        String[] words = text.trim().split("\\s+", 2);
        PitchClass tonic;
        try {
            tonic = PitchClass.parse(words[0]);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("'" + words[0] + "' is no tonic: write a note name such as A or F♯", e);
        }
        if (words.length < 2) {
            throw new IllegalArgumentException(
                    "'" + text + "' names no scale: write both, such as \"A minor pentatonic\"");
        }
        String scale = words[1];
        return new HomeScale(
                tonic,
                Scale.named(scale)
                        .orElseThrow(() -> new UnknownNameException(
                                "a scale",
                                scale,
                                Arrays.stream(Scale.values())
                                        .map(Scale::toString)
                                        .toList())));
    }

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

    /** The tonic of the minor pentatonic whose boxes the scale is fingered in: F♯ for A major. */
    public PitchClass boxTonic() {
        return scale.hasMajorThird() ? tonic.plus(SIXTH) : tonic;
    }

    /** The same as a chroma, 0 to 11. */
    public int boxTonicChroma() {
        return boxTonic().chroma();
    }

    /** "A minor pentatonic". */
    @Override
    public String toString() {
        return tonic + " " + scale;
    }
}
