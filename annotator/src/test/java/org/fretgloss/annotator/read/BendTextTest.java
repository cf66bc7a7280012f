package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Guitarists count bends in whole tones: common practice, no source. */
class BendTextTest {

    @ParameterizedTest(name = "{0} is {1} semitones")
    @CsvSource({
        "full, 2",
        "Full, 2",
        "FULL BEND, 2",
        "whole bend, 2",
        "½, 1",
        "1/2, 1",
        "half-bend, 1",
        "1/2 bend, 1",
        "¼, 1/2",
        "1/4, 1/2",
        "quarter bend, 1/2",
        "¾, 3/2",
        "3/4 bend, 3/2",
        "1½, 3",
        "1 ½, 3",
        "1 1/2, 3",
        "1-1/2, 3",
        "1 3/4, 7/2",
        "2½, 5",
        "2 bend, 4"
    })
    void isAWidthInWholeTones(String text, String semitones) {
        assertThat(BendText.semitones(text)).contains(Fraction.parse(semitones));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1",
                "2",
                "3/4",
                "4/4",
                "half",
                "whole",
                "quarter",
                "bend",
                "full band",
                "half time",
                "1/8",
                "0",
                "full 1/2",
                "fullness",
                "♩ = 1/2",
                "4 bend"
            })
    void isNoOtherWord(String text) {
        assertThat(BendText.semitones(text)).isEmpty();
    }

    @Test
    void isNothingWhereNothingStands() {
        assertThat(BendText.semitones(null)).isEmpty();
    }
}
