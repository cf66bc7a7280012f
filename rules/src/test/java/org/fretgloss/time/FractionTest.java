package org.fretgloss.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FractionTest {

    /** What holds for any three fractions. */
    private interface Law {
        void check(Fraction a, Fraction b, Fraction c);
    }

    private static void forEachDraw(Law law) {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            law.check(draw(random), draw(random), draw(random));
        }
    }

    private static Fraction draw(Random random) {
        return Fraction.of(random.nextInt(2001) - 1000, 1 + random.nextInt(96));
    }

    @ParameterizedTest
    @CsvSource({"2, 4, 1/2", "-2, 4, -1/2", "2, -4, -1/2", "-6, -4, 3/2", "0, -7, 0", "8, 2, 4"})
    void isInLowestTermsAndTheNumeratorCarriesTheSign(long numerator, long denominator, String text) {
        assertThat(Fraction.of(numerator, denominator)).hasToString(text);
    }

    @Test
    void threeTripletsFillABeat() {
        Fraction triplet = Fraction.of(1, 3);
        assertThat(triplet.plus(triplet).plus(triplet)).isEqualTo(Fraction.ONE);
        assertThat(triplet.times(3)).isEqualTo(Fraction.ONE);
        assertThat(Fraction.ONE.dividedBy(triplet)).isEqualTo(Fraction.of(3));
    }

    @Test
    void addsAndMultipliesByTheLawsOfArithmetic() {
        forEachDraw((a, b, c) -> {
            assertThat(a.plus(b)).isEqualTo(b.plus(a));
            assertThat(a.plus(b).plus(c)).isEqualTo(a.plus(b.plus(c)));
            assertThat(a.times(b)).isEqualTo(b.times(a));
            assertThat(a.times(b).times(c)).isEqualTo(a.times(b.times(c)));
            assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
            assertThat(a.plus(b).minus(b)).isEqualTo(a);
            if (!b.isZero()) {
                assertThat(a.times(b).dividedBy(b)).isEqualTo(a);
            }
        });
    }

    @Test
    void comparesAsTheCrossProductsDo() {
        forEachDraw((a, b, c) -> {
            int order = crossed(a, b).compareTo(crossed(b, a));
            assertThat(Integer.signum(a.compareTo(b))).as("%s and %s", a, b).isEqualTo(order);
            assertThat(a.isLessThan(b)).isEqualTo(order < 0);
            assertThat(a.isMoreThan(b)).isEqualTo(order > 0);
            assertThat(a.equals(b)).isEqualTo(order == 0);
            assertThat(a.min(b).plus(a.max(b))).isEqualTo(a.plus(b));
        });
    }

    private static BigInteger crossed(Fraction a, Fraction b) {
        return BigInteger.valueOf(a.numerator()).multiply(BigInteger.valueOf(b.denominator()));
    }

    @Test
    void theFloorIsTheLargestWholeNumberNotAbove() {
        forEachDraw((a, b, c) -> {
            Fraction rest = a.minus(Fraction.of(a.floor()));
            assertThat(rest.isNegative()).as("%s", a).isFalse();
            assertThat(rest.isLessThan(Fraction.ONE)).as("%s", a).isTrue();
            assertThat(a.isWhole()).isEqualTo(rest.isZero());
        });
    }

    @Test
    void isReadAsItIsWritten() {
        forEachDraw((a, b, c) -> assertThat(Fraction.parse(a.toString())).isEqualTo(a));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "1/", "/2", "1/0", "1.5", "1/2/3", "½"})
    void refusesAnythingElse(String text) {
        assertThatThrownBy(() -> Fraction.parse(text)).isInstanceOf(NumberFormatException.class);
    }

    @Test
    void nothingIsDividedByZero() {
        assertThatThrownBy(() -> Fraction.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fraction.ONE.dividedBy(Fraction.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The square of this denominator does not fit, and need not. */
    @Test
    void addsLikeFractionsHoweverFine() {
        Fraction tick = Fraction.of(1, 3_037_000_507L);
        assertThat(tick.plus(tick)).isEqualTo(Fraction.of(2, 3_037_000_507L));
    }

    @Test
    void saysSoRatherThanOverflow() {
        Fraction most = Fraction.of(Long.MAX_VALUE);
        assertThatThrownBy(() -> most.plus(Fraction.ONE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> most.times(2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Fraction.of(1, Long.MIN_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThat(most.times(Fraction.of(2, Long.MAX_VALUE)))
                .as("a result that fits is found, though the products on the way would not fit")
                .isEqualTo(Fraction.of(2));
    }
}
