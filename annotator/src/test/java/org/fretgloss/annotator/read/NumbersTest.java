package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "12, 12", "0.5, 1/2", "-0.25, -1/4", "0.33, 33/100", "1e3, 1000", "480.125, 3841/8"})
    void readsShortNumbersExactly(String written, String number) {
        assertThat(Numbers.fraction(new BigDecimal(written))).contains(Fraction.parse(number));
    }

    /** Every fraction that music divides by, rounded to four to six places, is found again. */
    @Test
    void findsTheFractionThatWasRounded() {
        for (int denominator = 1; denominator <= 48; denominator++) {
            for (int numerator = 0; numerator <= 2 * denominator; numerator++) {
                Fraction exact = Fraction.of(numerator, denominator);
                for (int places = 4; places <= 6; places++) {
                    BigDecimal rounded = BigDecimal.valueOf(numerator)
                            .divide(BigDecimal.valueOf(denominator), places, RoundingMode.HALF_UP);
                    assertThat(Numbers.fraction(rounded)).as(rounded.toString()).contains(exact);
                    assertThat(Numbers.fraction(rounded.negate())).contains(exact.negated());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e9", "99999999999", "-1e2000000000", "1E+2147483647"})
    void believesNoAbsurdNumber(String written) {
        assertThat(Numbers.fraction(new BigDecimal(written))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e-9", "-1E-2000000000", "0e5", "0.0000000000"})
    void takesTheTiniestForNothing(String written) {
        assertThat(Numbers.fraction(new BigDecimal(written))).contains(Fraction.ZERO);
    }

    @Test
    void readsWholeNumbersThatFit() {
        assertThat(Numbers.whole(BigInteger.valueOf(-7))).hasValue(-7);
        assertThat(Numbers.whole(BigInteger.TEN.pow(30))).isEmpty();
        assertThat(Numbers.whole(null)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "-2, -2", "0.5, 0", "-1.5, -1", "3, 3", "4, 0", "1e9, 0"})
    void readsAlterations(String written, int semitones) {
        assertThat(Numbers.alteration(new BigDecimal(written))).isEqualTo(semitones);
    }
}
