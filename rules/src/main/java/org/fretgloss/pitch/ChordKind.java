package org.fretgloss.pitch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Every kind-value of MusicXML 4.0, with the tones that the schema's own text gives it and the suffix that lead sheets
 * print.
 *
 * <p>The functional sixths and the Tristan chord have no tones in the schema. Theirs are common practice, no source: the
 * augmented sixths upward from the lowered sixth degree, the Neapolitan as the major triad that it is, the Tristan chord
 * as F B D♯ G♯. The kinds "pedal", "other" and "none" have no tones of their own.
 */
public enum ChordKind {
    MAJOR("major", "", "1 3 5"),
    MINOR("minor", "m", "1 ♭3 5"),
    AUGMENTED("augmented", "aug", "1 3 ♯5"),
    DIMINISHED("diminished", "dim", "1 ♭3 ♭5"),
    DOMINANT("dominant", "7", "1 3 5 ♭7"),
    MAJOR_SEVENTH("major-seventh", "maj7", "1 3 5 7"),
    MINOR_SEVENTH("minor-seventh", "m7", "1 ♭3 5 ♭7"),
    DIMINISHED_SEVENTH("diminished-seventh", "dim7", "1 ♭3 ♭5 ♭♭7"),
    AUGMENTED_SEVENTH("augmented-seventh", "7♯5", "1 3 ♯5 ♭7"),
    HALF_DIMINISHED("half-diminished", "m7♭5", "1 ♭3 ♭5 ♭7"),
    MAJOR_MINOR("major-minor", "m(maj7)", "1 ♭3 5 7"),
    MAJOR_SIXTH("major-sixth", "6", "1 3 5 6"),
    MINOR_SIXTH("minor-sixth", "m6", "1 ♭3 5 6"),
    DOMINANT_NINTH("dominant-ninth", "9", "1 3 5 ♭7 9"),
    MAJOR_NINTH("major-ninth", "maj9", "1 3 5 7 9"),
    MINOR_NINTH("minor-ninth", "m9", "1 ♭3 5 ♭7 9"),
    DOMINANT_11TH("dominant-11th", "11", "1 3 5 ♭7 9 11"),
    MAJOR_11TH("major-11th", "maj11", "1 3 5 7 9 11"),
    MINOR_11TH("minor-11th", "m11", "1 ♭3 5 ♭7 9 11"),
    DOMINANT_13TH("dominant-13th", "13", "1 3 5 ♭7 9 11 13"),
    MAJOR_13TH("major-13th", "maj13", "1 3 5 7 9 11 13"),
    MINOR_13TH("minor-13th", "m13", "1 ♭3 5 ♭7 9 11 13"),
    SUSPENDED_SECOND("suspended-second", "sus2", "1 2 5"),
    SUSPENDED_FOURTH("suspended-fourth", "sus4", "1 4 5"),
    NEAPOLITAN("Neapolitan", "", "1 3 5"),
    ITALIAN("Italian", "It6", "1 3 ♯6"),
    FRENCH("French", "Fr6", "1 3 ♯4 ♯6"),
    GERMAN("German", "Ger6", "1 3 5 ♯6"),
    PEDAL("pedal", "", ""),
    POWER("power", "5", "1 5"),
    TRISTAN("Tristan", "Tristan", "1 ♯4 ♯6 ♯9"),
    OTHER("other", "", ""),
    NONE("none", "", "");

    private final String value;
    private final String suffix;
    private final List<Degree> degrees;

    ChordKind(String value, String suffix, String degrees) {
        this.value = value;
        this.suffix = suffix;
        this.degrees = degrees.isEmpty() ? List.of() : Degree.parseAll(degrees);
    }

    /** The kind of that kind-value, exactly as the schema spells it. */
    public static Optional<ChordKind> ofValue(String value) {
        return Arrays.stream(values()).filter(kind -> kind.value.equals(value)).findFirst();
    }

    /** The schema's kind-value. */
    public String value() {
        return value;
    }

    /** What stands after the root on a lead sheet; "" for a major triad and for kinds without tones. */
    public String suffix() {
        return suffix;
    }

    /** Chord tones above the root; empty for kinds without tones. */
    public List<Degree> degrees() {
        return degrees;
    }
}
