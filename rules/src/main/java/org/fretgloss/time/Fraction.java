package org.fretgloss.time;

/**
 * An exact fraction, in lowest terms, used for every time (in quarter notes or beats) and every bend width (in
 * semitones). Floating point would let a triplet drift off its beat.
 *
 * @param numerator carries the sign
 * @param denominator at least 1
 */
public record Fraction(long numerator, long denominator) implements Comparable<Fraction> {

    public static final Fraction ZERO = new Fraction(0, 1);
    public static final Fraction ONE = new Fraction(1, 1);

    /**
     * Reduces to lowest terms.
     *
     * @throws IllegalArgumentException if the denominator is 0
     * @throws ArithmeticException if a term does not fit 64 bits
     */
    public Fraction {
        if (denominator == 0) {
            throw new IllegalArgumentException("a fraction has no denominator 0");
        }
        if (denominator < 0) {
            numerator = Math.negateExact(numerator);
            denominator = Math.negateExact(denominator);
        }
        long divisor = greatestCommonDivisor(numerator, denominator);
        numerator /= divisor;
        denominator /= divisor;
    }

    public static Fraction of(long whole) {
        return new Fraction(whole, 1);
    }

    public static Fraction of(long numerator, long denominator) {
        return new Fraction(numerator, denominator);
    }

    /**
     * Reads what {@link #toString} writes: "3" or "7/2".
     *
     * @throws NumberFormatException if the text is neither
     */
    public static Fraction parse(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return of(Long.parseLong(text));
        }
        long denominator = Long.parseLong(text.substring(slash + 1));
        if (denominator == 0) {
            throw new NumberFormatException("a fraction has no denominator 0: " + text);
        }
        return of(Long.parseLong(text.substring(0, slash)), denominator);
    }

    public Fraction plus(Fraction other) {
        long shared = greatestCommonDivisor(denominator, other.denominator);
        long mine = other.denominator / shared;
        long theirs = denominator / shared;
        return of(
                Math.addExact(Math.multiplyExact(numerator, mine), Math.multiplyExact(other.numerator, theirs)),
                Math.multiplyExact(denominator, mine));
    }

    public Fraction minus(Fraction other) {
        return plus(other.negated());
    }

    public Fraction times(Fraction other) {
        Fraction left = of(numerator, other.denominator);
        Fraction right = of(other.numerator, denominator);
        return of(
                Math.multiplyExact(left.numerator, right.numerator),
                Math.multiplyExact(left.denominator, right.denominator));
    }

    public Fraction times(long factor) {
        return times(of(factor));
    }

    /**
     * The quotient.
     *
     * @throws IllegalArgumentException if the divisor is zero
     */
    public Fraction dividedBy(Fraction divisor) {
        return times(divisor.inverted());
    }

    @SuppressWarnings("ArgumentSelectionDefectChecker") // swapping the terms is what inverting means
    private Fraction inverted() {
        return of(denominator, numerator);
    }

    public Fraction negated() {
        return new Fraction(Math.negateExact(numerator), denominator);
    }

    public Fraction abs() {
        return numerator < 0 ? negated() : this;
    }

    public Fraction min(Fraction other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Fraction max(Fraction other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The largest whole number not above this. */
    public long floor() {
        return Math.floorDiv(numerator, denominator);
    }

    public int signum() {
        return Long.signum(numerator);
    }

    public boolean isZero() {
        return numerator == 0;
    }

    public boolean isPositive() {
        return numerator > 0;
    }

    public boolean isNegative() {
        return numerator < 0;
    }

    public boolean isWhole() {
        return denominator == 1;
    }

    public boolean isLessThan(Fraction other) {
        return compareTo(other) < 0;
    }

    public boolean isMoreThan(Fraction other) {
        return compareTo(other) > 0;
    }

    /** For statistics only; times are compared and added exactly. */
    public double toDouble() {
        return (double) numerator / denominator;
    }

    @Override
    public int compareTo(Fraction other) {
        if (denominator == other.denominator) {
            return Long.compare(numerator, other.numerator);
        }
        return Long.compare(
                Math.multiplyExact(numerator, other.denominator), Math.multiplyExact(other.numerator, denominator));
    }

    /** "3" or "7/2". */
    @Override
    public String toString() {
        return denominator == 1 ? Long.toString(numerator) : numerator + "/" + denominator;
    }

    private static long greatestCommonDivisor(long a, long b) {
        long x = Math.absExact(a);
        long y = b;
        while (y != 0) {
            long rest = x % y;
            x = y;
            y = rest;
        }
        return x == 0 ? 1 : x;
    }
}
