package org.fretgloss.pitch;

import java.util.List;

/**
 * A spelled note name without octave: C♯ and D♭ differ.
 *
 * @param step the letter
 * @param alteration semitones up (♯) or down (♭)
 */
public record PitchClass(Step step, int alteration) {

    /** Every tonic a guitarist meets, each chroma in its usual spelling (as in published tables of scales). */
    private static final List<String> USUAL = List.of("C", "D♭", "D", "E♭", "E", "F", "F♯", "G", "A♭", "A", "B♭", "B");

    private static final List<Step> STEPS_BY_FIFTHS = List.of(Step.F, Step.C, Step.G, Step.D, Step.A, Step.E, Step.B);

    /**
     * Reads "A", "C♯", "Bb".
     *
     * @throws IllegalArgumentException if the text is no note name
     */
    public static PitchClass parse(String name) {
        if (name.isEmpty() || "ABCDEFG".indexOf(name.charAt(0)) < 0) {
            throw new IllegalArgumentException("no note name: " + name);
        }
        return new PitchClass(Step.valueOf(name.substring(0, 1)), Accidentals.parse(name.substring(1)));
    }

    /** The usual name for a chroma where nothing says how to spell it. */
    public static PitchClass usual(int chroma) {
        return parse(USUAL.get(Math.floorMod(chroma, 12)));
    }

    /** The note at a place on the line of fifths: C 0, G 1, F −1, C♯ 7, D♭ −5. */
    public static PitchClass atFifth(int fifths) {
        int fromF = fifths + 1;
        Step step = STEPS_BY_FIFTHS.get(Math.floorMod(fromF, STEPS_BY_FIFTHS.size()));
        return new PitchClass(step, Math.floorDiv(fromF, STEPS_BY_FIFTHS.size()));
    }

    /** Semitones above C, 0 to 11; the same for C♯ and D♭. */
    public int chroma() {
        return Math.floorMod(step.semitones() + alteration, 12);
    }

    /** Place on the line of fifths: C 0, G 1, F −1, C♯ 7, D♭ −5. */
    public int fifths() {
        return step.fifths() + 7 * alteration;
    }

    /** The note that stands a degree above this one: A plus ♭3 is C. */
    public PitchClass plus(Degree degree) {
        Step target = step.up(degree.number() - 1);
        int span = Math.floorMod(target.semitones() - step.semitones(), 12);
        int sharps = Math.floorMod(degree.chroma() + alteration - span, 12);
        return new PitchClass(target, sharps > 6 ? sharps - 12 : sharps);
    }

    /** The degree at which a note stands above this one, by its spelling: C♯ is the 3 of A, and D♭ the ♭4. */
    public Degree degreeOf(PitchClass note) {
        int letters = step.lettersUpTo(note.step);
        Degree natural = new Degree(letters + 1, 0);
        int fifths = note.fifths() - plus(natural).fifths();
        return new Degree(letters + 1, fifths / 7);
    }

    /** Semitones from this up to the other, 0 to 11. */
    public int semitonesUpTo(PitchClass other) {
        return Math.floorMod(other.chroma() - chroma(), 12);
    }

    @Override
    public String toString() {
        return step + Accidentals.of(alteration);
    }
}
