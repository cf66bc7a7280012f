package org.fretgloss.pitch;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The scales a solo can be at home in, as degrees above the tonic.
 *
 * <p>Degrees are those of common practice, no source; the tests compare them with the table of an independent library.
 * Two are spelled for reading rather than by the book: the altered scale has a 3, which a player hears as the chord's,
 * where the book says ♭4, and the whole-tone scale a ♭7 where the book says ♯6.
 */
public enum Scale {
    MINOR_PENTATONIC("1 ♭3 4 5 ♭7"),
    MAJOR_PENTATONIC("1 2 3 5 6"),
    BLUES("1 ♭3 4 ♭5 5 ♭7"),
    MAJOR_BLUES("1 2 ♭3 3 5 6"),
    MAJOR("1 2 3 4 5 6 7"),
    NATURAL_MINOR("1 2 ♭3 4 5 ♭6 ♭7"),
    DORIAN("1 2 ♭3 4 5 6 ♭7"),
    MIXOLYDIAN("1 2 3 4 5 6 ♭7"),
    HARMONIC_MINOR("1 2 ♭3 4 5 ♭6 7"),
    MELODIC_MINOR("1 2 ♭3 4 5 6 7"),
    PHRYGIAN("1 ♭2 ♭3 4 5 ♭6 ♭7"),
    PHRYGIAN_DOMINANT("1 ♭2 3 4 5 ♭6 ♭7"),
    LYDIAN("1 2 3 ♯4 5 6 7"),
    LOCRIAN("1 ♭2 ♭3 4 ♭5 ♭6 ♭7"),
    LYDIAN_DOMINANT("1 2 3 ♯4 5 6 ♭7"),
    ALTERED("1 ♭2 ♭3 3 ♭5 ♭6 ♭7"),
    HARMONIC_MAJOR("1 2 3 4 5 ♭6 7"),
    DOUBLE_HARMONIC_MAJOR("1 ♭2 3 4 5 ♭6 7"),
    HUNGARIAN_MINOR("1 2 ♭3 ♯4 5 ♭6 7"),
    WHOLE_TONE("1 2 3 ♯4 ♯5 ♭7"),
    DIMINISHED("1 2 ♭3 4 ♭5 ♭6 6 7"),
    DOMINANT_DIMINISHED("1 ♭2 ♭3 3 ♯4 5 6 ♭7"),
    CHROMATIC("1 ♭2 2 ♭3 3 4 ♭5 5 ♭6 6 ♭7 7");

    /** The scales that are looked for when the user states none, smallest first. */
    public static final List<Scale> CANDIDATES = List.of(
            MINOR_PENTATONIC,
            MAJOR_PENTATONIC,
            BLUES,
            MAJOR_BLUES,
            MAJOR,
            NATURAL_MINOR,
            DORIAN,
            MIXOLYDIAN,
            HARMONIC_MINOR,
            MELODIC_MINOR,
            PHRYGIAN,
            PHRYGIAN_DOMINANT,
            LYDIAN);

    private final List<Degree> degrees;
    private final int chromas;

    Scale(String degrees) {
        this.degrees = Degree.parseAll(degrees);
        this.chromas =
                this.degrees.stream().mapToInt(degree -> 1 << degree.chroma()).reduce(0, (a, b) -> a | b);
    }

    /** The scale of that name, whatever its capitals: "minor pentatonic"; plain "minor" is the natural minor. */
    public static Optional<Scale> named(String name) {
        String given = name.trim().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
        String wanted = given.equals("minor") || given.equals("aeolian") ? NATURAL_MINOR.toString() : given;
        return Arrays.stream(values())
                .filter(scale -> scale.toString().equals(wanted))
                .findFirst();
    }

    /** In rising order; the first is the tonic. */
    public List<Degree> degrees() {
        return degrees;
    }

    /** Whether the note that lies a number of semitones above the tonic belongs to the scale. */
    public boolean contains(int semitonesAboveTonic) {
        return (chromas >> Math.floorMod(semitonesAboveTonic, 12) & 1) != 0;
    }

    public boolean containsAll(Scale other) {
        return (chromas & other.chromas) == other.chromas;
    }

    /** The scale's own name for a degree (Lydian says ♯4), the usual name for a note outside it. */
    public Degree degreeAt(int semitonesAboveTonic) {
        int chroma = Math.floorMod(semitonesAboveTonic, 12);
        return degrees.stream()
                .filter(degree -> degree.chroma() == chroma)
                .findFirst()
                .orElseGet(() -> Degree.named(chroma));
    }

    /** Whether the major third is one of its degrees: such a scale is fingered in the boxes a minor third below. */
    public boolean hasMajorThird() {
        return contains(4);
    }

    /** The pentatonic at its heart: the major one where the scale has a major third, otherwise the minor one. */
    public Scale pentatonic() {
        return hasMajorThird() ? MAJOR_PENTATONIC : MINOR_PENTATONIC;
    }

    /** Spelled notes from a tonic, in rising order. */
    public List<PitchClass> notes(PitchClass tonic) {
        return degrees.stream().map(tonic::plus).toList();
    }

    /** The name in lower case: "phrygian dominant". */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
