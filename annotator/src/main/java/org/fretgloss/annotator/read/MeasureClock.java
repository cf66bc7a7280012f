package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/** The moment that reading has come to within a bar, in quarter notes from its start. */
final class MeasureClock {

    private Fraction now = Fraction.ZERO;
    private Fraction filled = Fraction.ZERO;
    private Fraction chordOnset = Fraction.ZERO;

    Fraction now() {
        return now;
    }

    /** The latest moment that anything has lasted to. */
    Fraction filled() {
        return filled;
    }

    /** Places a note or rest, and goes on to its end. */
    Fraction strike(Fraction duration) {
        chordOnset = now;
        forward(duration);
        return chordOnset;
    }

    /** Places a further note of the chord that was struck last; time does not go on. */
    Fraction strikeAlong(Fraction duration) {
        filled = filled.max(chordOnset.plus(duration));
        return chordOnset;
    }

    void forward(Fraction duration) {
        now = now.plus(duration);
        filled = filled.max(now);
    }

    /** Goes back, at most to the start of the bar; says whether it got all the way. */
    boolean back(Fraction duration) {
        Fraction target = now.minus(duration);
        now = target.max(Fraction.ZERO);
        return !target.isNegative();
    }
}
