package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;

class SilencesTest {

    private static Solo solo(String text) {
        return SoloText.parse(text).solo();
    }

    private static List<Silence> silences(String text) {
        return Silences.of(solo(text));
    }

    private static List<String> beats(String text) {
        return silences(text).stream()
                .map(silence -> silence.beats().toString())
                .toList();
    }

    @Test
    void lieBetweenNotesAcrossBarLines() {
        assertThat(silences("| r:1 3/7:1 r:2 | r:1 r:1 3/5:1 3/7:1/2 r |"))
                .extracting(
                        silence -> silence.before().index(),
                        silence -> silence.after().index(),
                        Silence::start,
                        Silence::end,
                        Silence::beats)
                .as("neither before the first note nor after the last")
                .containsExactly(tuple(0, 1, Fraction.of(2), Fraction.of(6), Fraction.of(4)));
    }

    @Test
    void aTieLeavesNoSilence() {
        assertThat(silences("| 3/7:4 | -:4 | 3/5:4 |")).isEmpty();
    }

    @Test
    void aNoteThatSoundsOnLeavesNoSilence() {
        assertThat(beats("| 3/7:4+1/5:1 r:2 1/8:1 | r:1 3/5:3 |"))
                .as("string 3 sounds until the bar's end")
                .containsExactly("1");
        assertThat(beats("| 3/7:3+1/5:1 r:3 | r:1 3/5:3 |"))
                .as("from the later end on")
                .containsExactly("2");
    }

    @Test
    void aDeadNoteEndsOne() {
        assertThat(beats("| 3/7:1 r:1 x3/5:1 r:1 | 3/7:4 |")).containsExactly("1", "1");
    }

    @Test
    void aGraceNoteEndsOne() {
        List<Silence> silences = silences("| 3/7:1 r:3 g3/5 | 3/7:4 |");
        assertThat(silences).singleElement().satisfies(silence -> {
            assertThat(silence.after().grace()).isTrue();
            assertThat(silence.beats()).isEqualTo(Fraction.of(3));
        });
    }

    @Test
    void beatsAreTheMetersOwn() {
        assertThat(beats("meter: 12/8\n| 3/7:3/2 r:3 3/5:3/2 |")).containsExactly("2");
        assertThat(beats("| 3/7:2 r:2 |\n| (6/8) r:3/2 3/5:3/2 |"))
                .as("two quarters of 4/4 and one dotted quarter of 6/8")
                .containsExactly("3");
        assertThat(beats("| 3/7:2 r:2 |\n| (5/8) r:1 3/5:3/2 |"))
                .as("two quarters of 4/4 and two eighths of 5/8")
                .containsExactly("4");
    }

    @Test
    void theShareIsTakenBetweenFirstOnsetAndLastEnd() {
        Solo solo = solo("| r:2 3/7:1 r:1 | r:1 3/7:1/2 r:3/2 3/5:1/2 r |");
        assertThat(SilenceShare.of(solo, Silences.of(solo)))
                .as("2 + 3/2 quarters of silence in 11/2")
                .isEqualTo(Fraction.of(7, 11));
    }

    @Test
    void aSoloWithoutRestsHasNoShare() {
        Solo full = solo("3/7:4");
        assertThat(SilenceShare.of(full, Silences.of(full))).isEqualTo(Fraction.ZERO);
        Solo empty = solo("r:4");
        assertThat(SilenceShare.of(empty, Silences.of(empty))).isEqualTo(Fraction.ZERO);
    }
}
