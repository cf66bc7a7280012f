package org.fretgloss.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlyphsTest {

    @ParameterizedTest
    @CsvSource({
        "3, 3",
        "1/2, ½",
        "7/2, 3½",
        "1/4, ¼",
        "7/4, 1¾",
        "2/3, ⅔",
        "4/3, 1⅓",
        "7/5, 7/5",
        "1/8, 1/8",
        "0, 0",
        "-3/2, -1½"
    })
    void writesAsMusiciansDo(String exact, String glyphs) {
        assertThat(Glyphs.of(Fraction.parse(exact))).isEqualTo(glyphs);
        assertThat(Glyphs.parse(glyphs)).isEqualTo(Fraction.parse(exact));
    }

    @Test
    void readsExactFractionsToo() {
        assertThat(Glyphs.parse("7/2")).isEqualTo(Fraction.of(7, 2));
    }

    @Test
    void readsWhatItWrites() {
        Random random = new Random(1);
        for (int i = 0; i < 1000; i++) {
            Fraction fraction = Fraction.of(random.nextInt(400) - 200, 1 + random.nextInt(24));
            assertThat(Glyphs.parse(Glyphs.of(fraction))).isEqualTo(fraction);
        }
    }

    @ParameterizedTest
    @CsvSource({"''", "x", "½½", "1/0", "3 ½"})
    void refusesAnythingElse(String text) {
        assertThatThrownBy(() -> Glyphs.parse(text)).isInstanceOf(NumberFormatException.class);
    }
}
