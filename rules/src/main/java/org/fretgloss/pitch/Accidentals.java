package org.fretgloss.pitch;

/** The signs for an alteration in semitones. */
final class Accidentals {

    static final String FLAT = "♭";
    static final String SHARP = "♯";

    private Accidentals() {}

    /** −1 gives ♭, 2 gives ♯♯, 0 nothing. */
    static String of(int alteration) {
        return (alteration < 0 ? FLAT : SHARP).repeat(Math.abs(alteration));
    }

    /**
     * Reads signs of one sort, typeset or ASCII: "♭", "bb", "#", "x" (double sharp).
     *
     * @throws IllegalArgumentException if anything else stands there
     */
    static int parse(String signs) {
        if (signs.matches("[♭b]*")) {
            return -signs.length();
        }
        if (signs.matches("[♯#]*|x")) {
            return signs.equals("x") ? 2 : signs.length();
        }
        throw new IllegalArgumentException("no accidental: " + signs);
    }
}
