package org.fretgloss.pitch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A spelled pitch with its octave in scientific notation: A4 is 440 Hz and MIDI number 69.
 *
 * @param name the spelled note name
 * @param octave of the letter: C4 is middle C, and B♯3 sounds like it
 */
public record Pitch(PitchClass name, int octave) {

    private static final Pattern WRITTEN = Pattern.compile("(.*?)(-?\\d{1,2})");

    /**
     * Reads "E4" or "C♯5".
     *
     * @throws IllegalArgumentException if the text is no pitch
     */
    public static Pitch parse(String text) {
        Matcher pitch = WRITTEN.matcher(text);
        if (!pitch.matches()) {
            throw new IllegalArgumentException("no pitch: " + text);
        }
        return new Pitch(PitchClass.parse(pitch.group(1)), Integer.parseInt(pitch.group(2)));
    }

    /** The pitch of a MIDI number in its usual spelling. */
    public static Pitch ofMidi(int midi) {
        return spelled(midi, PitchClass.usual(midi));
    }

    /**
     * The pitch of a MIDI number under a given name.
     *
     * @throws IllegalArgumentException if the name does not sound at that number
     */
    public static Pitch spelled(int midi, PitchClass name) {
        if (name.chroma() != Math.floorMod(midi, 12)) {
            throw new IllegalArgumentException(name + " does not sound at MIDI " + midi);
        }
        int natural = midi - name.alteration();
        return new Pitch(name, Math.floorDiv(natural, 12) - 1);
    }

    /** MIDI number: 60 is C4 (MIDI 1.0 specification; middle C as C4 is scientific pitch notation). */
    public int midi() {
        return 12 * (octave + 1) + name.step().semitones() + name.alteration();
    }

    public int chroma() {
        return name.chroma();
    }

    /** Letters above C0, octaves counted. */
    int letters() {
        return 7 * octave + Step.C.lettersUpTo(name.step());
    }

    /** The pitch an interval away, spelled by its letters: C♯4 and a minor third give E4. */
    public Pitch plus(Interval interval) {
        Step step = name.step().up(interval.letters());
        int target = Math.floorDiv(letters() + interval.letters(), 7);
        Pitch natural = new Pitch(new PitchClass(step, 0), target);
        return new Pitch(new PitchClass(step, midi() + interval.semitones() - natural.midi()), target);
    }

    /** The same spelled note some octaves higher or lower. */
    public Pitch octavesUp(int octaves) {
        return new Pitch(name, octave + octaves);
    }

    @Override
    public String toString() {
        return name.toString() + octave;
    }
}
