package org.fretgloss.pitch;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The place of a note above a tonic or a chord's root, named as musicians do: 1, ♭3, ♯5, 9.
 *
 * @param number 1 to 7 within the octave, up to 13 for a chord's extensions
 * @param alteration semitones against the major scale's degree of that number
 */
public record Degree(int number, int alteration) implements Comparable<Degree> {

    private static final Pattern WRITTEN = Pattern.compile("(\\D*)(\\d{1,2})");

    /** Semitones of the major scale above its tonic. */
    private static final List<Integer> MAJOR_SCALE = List.of(0, 2, 4, 5, 7, 9, 11);

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
        Matcher degree = WRITTEN.matcher(text);
        if (!degree.matches()) {
            throw new IllegalArgumentException("no degree: " + text);
        }
        return new Degree(Integer.parseInt(degree.group(2)), Accidentals.parse(degree.group(1)));
    }

    /** Reads degrees parted by blanks: "1 ♭3 5". */
    static List<Degree> parseAll(String text) {
        return Pattern.compile(" ").splitAsStream(text).map(Degree::parse).toList();
    }

    /** The usual name of the degree that lies a number of semitones above the tonic, octaves apart. */
    public static Degree named(int semitones) {
        return NAMED.get(Math.floorMod(semitones, 12));
    }

    /** Semitones above the root, octaves counted: 14 for a 9. */
    public int semitones() {
        return 12 * ((number - 1) / 7) + MAJOR_SCALE.get((number - 1) % 7) + alteration;
    }

    /** Semitones above the root, 0 to 11. */
    public int chroma() {
        return Math.floorMod(semitones(), 12);
    }

    /** By number, then by alteration: ♭9 before 9. */
    @Override
    public int compareTo(Degree other) {
        return Comparator.comparingInt(Degree::number)
                .thenComparingInt(Degree::alteration)
                .compare(this, other);
    }

    @Override
    public String toString() {
        return Accidentals.of(alteration) + number;
    }
}
