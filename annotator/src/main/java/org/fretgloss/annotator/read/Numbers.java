package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/** Numbers as files write them, kept within what music can mean. */
final class Numbers {

    /** Whole digits of the largest number that is believed. */
    private static final int WHOLE_DIGITS = 9;

    /** Decimals that are taken as they stand; longer ones are some fraction that a program rounded. */
    private static final int EXACT_PLACES = 2;

    private static final int MOST_PLACES = 6;

    /** Semitones: three sharps are seen in no music. */
    private static final Fraction MOST_ALTERATION = Fraction.of(3);

    private Numbers() {}

    /** The number exactly; 0.3333 is read as ⅓, the simplest fraction that rounds to it. None if absent or absurd. */
    static Optional<Fraction> fraction(@Nullable BigDecimal number) {
        if (number == null) {
            return Optional.empty();
        }
        long wholeDigits = (long) number.precision() - number.scale();
        if (wholeDigits > WHOLE_DIGITS) {
            return Optional.empty();
        }
        if (number.signum() == 0 || wholeDigits < -MOST_PLACES) {
            return Optional.of(Fraction.ZERO);
        }
        return Optional.of(number.signum() < 0 ? positive(number.negate()).negated() : positive(number));
    }

    /** The whole number; none if absent or beyond a billion. */
    static OptionalInt whole(@Nullable BigInteger number) {
        return number == null || number.bitLength() > 30 ? OptionalInt.empty() : OptionalInt.of(number.intValue());
    }

    /** An alteration in whole semitones, broken ones cut toward zero; 0 if absent or absurd. */
    static int alteration(@Nullable BigDecimal number) {
        return fraction(number)
                .filter(alter -> !alter.abs().isMoreThan(MOST_ALTERATION))
                .map(alter -> (int) (alter.numerator() / alter.denominator()))
                .orElse(0);
    }

    /** Whether a number stands between two whole ones. */
    static boolean isBroken(@Nullable BigDecimal number) {
        return fraction(number).filter(value -> value.denominator() != 1).isPresent();
    }

    private static Fraction positive(BigDecimal number) {
        BigDecimal rounded =
                number.setScale(Math.min(MOST_PLACES, Math.max(number.scale(), 0)), RoundingMode.HALF_EVEN);
        BigDecimal whole = rounded.setScale(0, RoundingMode.DOWN);
        return Fraction.of(whole.longValueExact())
                .plus(part(rounded.subtract(whole).stripTrailingZeros()));
    }

    private static Fraction part(BigDecimal decimals) {
        int places = Math.max(decimals.scale(), 0);
        long power = BigInteger.TEN.pow(places).longValueExact();
        Fraction exact = Fraction.of(decimals.movePointRight(places).longValueExact(), power);
        if (places <= EXACT_PLACES) {
            return exact;
        }
        Fraction tolerance = Fraction.of(1, 2 * power);
        return simplestBetween(exact.minus(tolerance), exact.plus(tolerance));
    }

    /** The fraction with the smallest denominator between two positive ones, by the continued fraction they share. */
    private static Fraction simplestBetween(Fraction low, Fraction high) {
        Fraction whole = Fraction.of(low.floor());
        if (low.equals(whole)) {
            return whole;
        }
        if (low.floor() < high.floor()) {
            return whole.plus(Fraction.ONE);
        }
        return whole.plus(inverse(simplestBetween(inverse(high.minus(whole)), inverse(low.minus(whole)))));
    }

    private static Fraction inverse(Fraction number) {
        return Fraction.ONE.dividedBy(number);
    }
}
