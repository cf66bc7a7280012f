package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/** Keeps moments within bounds in which any two can be compared and added exactly in 64 bits. */
final class Exact {

    /** Quarter notes: a week of music. */
    private static final Fraction LATEST = Fraction.of(1 << 20);

    private static final long FINEST = 1 << 20;

    private Exact() {}

    /**
     * The moment itself.
     *
     * @param moment quarter notes from the start of a part
     * @throws ArithmeticException if it lies too late or between too fine divisions to be counted with
     */
    static Fraction checked(Fraction moment) {
        if (moment.denominator() > FINEST || moment.isMoreThan(LATEST)) {
            throw new ArithmeticException("not to be counted with: " + moment);
        }
        return moment;
    }
}
