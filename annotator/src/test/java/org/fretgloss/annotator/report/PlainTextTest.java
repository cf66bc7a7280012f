package org.fretgloss.annotator.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void showsMusicAndLettersAsTheyAre() {
        assertThat(PlainText.of("½ ♭3→3, Ünder the Brücke · 夜 𝄞")).isEqualTo("½ ♭3→3, Ünder the Brücke · 夜 𝄞");
    }

    @Test
    void takesTheTerminalOutOfTheScoresHands() {
        assertThat(PlainText.of("\u001b[2Jcleared")).isEqualTo("\uFFFD[2Jcleared");
        assertThat(PlainText.of("one\ntwo\rthree\u202Efour\u0000"))
                .isEqualTo("one\uFFFDtwo\uFFFDthree\uFFFDfour\uFFFD");
    }
}
