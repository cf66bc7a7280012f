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
        int alteration = 0;
        for (int i = 0; i < signs.length(); i++) {
            alteration += switch (signs.charAt(i)) {
                case '♭', 'b' -> -1;
                case '♯', '#' -> 1;
                case 'x' -> 2;
                default -> throw new IllegalArgumentException("no accidental: " + signs);
            };
        }
        return alteration;
    }
}
