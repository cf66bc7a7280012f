package org.fretgloss.solo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the ear makes of a bend; the widths' names are common practice, no source. */
class BendTest {

    private static Bend bend(String heights) {
        return new Bend(Arrays.stream(heights.split(" ")).map(Fraction::parse).toList());
    }

    /** Width in semitones, and the whole semitones that are heard: a ¾ bend aims at the upper of the two notes. */
    @ParameterizedTest
    @CsvSource({
        "1/2, 0", "3/4, 0", "1, 1", "5/4, 1", "3/2, 2", "7/4, 2", "2, 2", "9/4, 2", "5/2, 3", "3, 3", "7/2, 4", "4, 4"
    })
    void isHeardAtTheNearestSemitoneAndHalvesGoUp(String width, int heard) {
        assertThat(bend("0 " + width).heardSemitones()).isEqualTo(heard);
    }

    @ParameterizedTest
    @CsvSource({"0 2, 0, 2", "2, 2, 2", "3/2 0, 2, 0", "0 2 1, 0, 1", "0 2 3/2, 0, 2", "0 3 1/2, 0, 0"})
    void beginsAndEndsWhereItIsHeard(String heights, int start, int end) {
        assertThat(bend(heights).heardAtStart()).isEqualTo(start);
        assertThat(bend(heights).heardAtEnd()).isEqualTo(end);
    }

    @Test
    void knowsHowItIsMade() {
        assertThat(bend("2").isPreBend()).isTrue();
        assertThat(bend("0 2").isPreBend()).isFalse();
        assertThat(bend("0 2 0").isReleased()).isTrue();
        assertThat(bend("0 2").isReleased()).isFalse();
        assertThat(bend("0 2 0 2").isRepeated()).isTrue();
        assertThat(bend("0 1 2").isRepeated()).as("a bend in stages").isFalse();
        assertThat(bend("0 1/2").isCurl()).isTrue();
        assertThat(bend("0 1").isCurl()).isFalse();
    }

    @Test
    void risesFromTheFretUnlessItIsBentBefore() {
        assertThat(bend("0 2 0").risesFromFret()).isTrue();
        assertThat(bend("2 0").risesFromFret()).isFalse();
        assertThat(bend("2 0 2").risesFromFret()).isTrue();
        assertThat(bend("0 1 2").risesFromFret())
                .as("in stages the peak is reached from halfway")
                .isFalse();
    }

    @Test
    void refusesWhatIsNoBend() {
        Stream.of("0", "-1 2", "2 2")
                .forEach(heights -> assertThatThrownBy(() -> bend(heights))
                        .as(heights)
                        .isInstanceOf(IllegalArgumentException.class));
        assertThatThrownBy(() -> new Bend(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
