package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProgressionTest {

    @ParameterizedTest
    @ValueSource(strings = {"A7 | D7 | A7 | %", "| A7 | D7 | A7 | A7 |", "A7|D7|A7|%", "A7 || D7 | A7\n| % ||"})
    void readsBars(String chart) {
        assertThat(written(Progression.parse(chart))).isEqualTo("A7 | D7 | A7 | A7");
    }

    @Test
    void theChordsOfABarStandInOrder() {
        assertThat(written(Progression.parse("Am7 D9 | % | E7sus4  E7"))).isEqualTo("Am7 D9 | Am7 D9 | E7sus4 E7");
    }

    @Test
    void aBarMayBeWithoutChord() {
        assertThat(written(Progression.parse("A7 N.C. | NC | n.c."))).isEqualTo("A7 - | - | -");
    }

    @Test
    void whatTheUserWritesHasNoKey() {
        Progression given = Progression.parse("A7");
        assertThat(given.name()).isEqualTo("given");
        assertThat(given.key()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    A7 | H7      ; bar 2 of the chords: 'H7' is no chord: a chord begins with the capital letter of its root, A to G
                    A7 | D7 E7x  ; bar 2 of the chords: 'E7x' is no chord: 'x' is not understood
                    A7 | | D7    ; bar 2 of the chords is empty: write a chord, % to repeat the bar before, or N.C.
                    % | A7       ; bar 1 of the chords: % repeats the bar before, and there is none
                    A7 | % D7    ; bar 2 of the chords: % repeats a whole bar and stands in it alone
                    ' |  '       ; there are no chords: write bars such as "A7 | D7 | A7 | %"
                    """)
    void saysWhichBarIsWrong(String chart, String message) {
        assertThatThrownBy(() -> Progression.parse(chart))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    /** Chord names, "-" for none. */
    static String written(Progression progression) {
        return progression.bars().stream()
                .map(bar -> bar.stream()
                        .map(chord -> chord.map(symbol -> symbol.name()).orElse("-"))
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" | "));
    }
}
