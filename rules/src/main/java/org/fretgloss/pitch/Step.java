package org.fretgloss.pitch;

import java.util.List;

/** A note name without accidental, with its distance above C and its place on the line of fifths (C is 0). */
public enum Step {
    C(0, 0),
    D(2, 2),
    E(4, 4),
    F(5, -1),
    G(7, 1),
    A(9, 3),
    B(11, 5);

    private static final List<Step> LETTERS = List.of(values());

    private final int semitones;
    private final int fifths;

    Step(int semitones, int fifths) {
        this.semitones = semitones;
        this.fifths = fifths;
    }

    /** Semitones above C, 0 to 11. */
    public int semitones() {
        return semitones;
    }

    /** Fifths above C: F is −1, G is 1. */
    public int fifths() {
        return fifths;
    }

    /** The step a number of letters higher, going round: {@code A.up(2)} is C. */
    public Step up(int letters) {
        return LETTERS.get(Math.floorMod(LETTERS.indexOf(this) + letters, 7));
    }

    /** How many letters up to the next step of that name, 0 to 6: from A to C 2. */
    int lettersUpTo(Step other) {
        return Math.floorMod(LETTERS.indexOf(other) - LETTERS.indexOf(this), 7);
    }
}
