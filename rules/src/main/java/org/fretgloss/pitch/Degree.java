package org.fretgloss.pitch;

import java.util.List;

/**
 * The place of a note above a tonic or a chord's root, named as musicians do: 1, ♭3, ♯5, 9.
 *
 * @param number 1 to 7 within the octave, up to 13 for a chord's extensions
 * @param alteration semitones against the major scale's degree of that number
 */
public record Degree(int number, int alteration) {

    private static final int[] MAJOR_SCALE = {0, 2, 4, 5, 7, 9, 11};

    /** The twelve names against a tonic, by semitones (common practice, no source). */
    private static final List<Degree> NAMED = List.of(
            new Degree(1, 0),
            new Degree(2, -1),
            new Degree(2, 0),
            new Degree(3, -1),
            new Degree(3, 0),
            new Degree(4, 0),
            new Degree(5, -1),
            new Degree(5, 0),
            new Degree(6, -1),
            new Degree(6, 0),
            new Degree(7, -1),
            new Degree(7, 0));

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the number is below 1
     */
    public Degree {
        if (number < 1) {
            throw new IllegalArgumentException("no degree: " + number);
        }
    }

    /**
     * Reads "1", "♭3", "#11".
     *
     * @throws IllegalArgumentException if the text is no degree
     */
    public static Degree parse(String text) {
        int digits = 0;
        while (digits < text.length() && !Character.isDigit(text.charAt(digits))) {
            digits++;
        }
        return new Degree(Integer.parseInt(text.substring(digits)), Accidentals.parse(text.substring(0, digits)));
    }

    /** The usual name of the degree that lies a number of semitones above the tonic, octaves apart. */
    public static Degree named(int semitones) {
        return NAMED.get(Math.floorMod(semitones, 12));
    }

    /** Semitones above the root, octaves counted: 14 for a 9. */
    public int semitones() {
        return 12 * ((number - 1) / 7) + MAJOR_SCALE[(number - 1) % 7] + alteration;
    }

    /** Semitones above the root, 0 to 11. */
    public int chroma() {
        return Math.floorMod(semitones(), 12);
    }

    @Override
    public String toString() {
        return Accidentals.of(alteration) + number;
    }
}
