package org.fretgloss.checks;

/** Distances in words. */
final class Semitones {

    private Semitones() {}

    /** "1 semitone", "3 semitones". */
    static String of(int number) {
        return number + (number == 1 ? " semitone" : " semitones");
    }
}
