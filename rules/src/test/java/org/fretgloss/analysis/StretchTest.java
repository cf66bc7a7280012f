package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;

class StretchTest {

    private static List<String> stretches(String text) {
        return Stretch.of(SoloText.parse(text).analysis()).stream()
                .map(stretch -> stretch.chord() + " "
                        + stretch.notes().stream().map(Note::index).toList())
                .toList();
    }

    @Test
    void aChordChangeEndsOneAndTheSameChordAgainDoesNot() {
        assertThat(stretches("chords: A7 | A7 | D7\n| 3/6:4 | 1/5:4 | 2/7:4 |")).containsExactly("A7 [0, 1]", "D7 [2]");
    }

    @Test
    void aChordThatComesBackBeginsAnew() {
        assertThat(stretches("chords: A7 | D7\n| 3/6:4 | -:4 | 1/5:4 |")).containsExactly("A7 [0]", "A7 [1]");
    }

    @Test
    void aRestOfABeatEndsOneAndAShorterRestDoesNot() {
        assertThat(stretches("chords: A7\n| 3/6:1/2 r:1/2 1/5:1 r:1 2/8:1 |")).containsExactly("A7 [0, 1]", "A7 [2]");
    }

    @Test
    void aDeadNoteCutsARestInTwo() {
        assertThat(stretches("chords: A7\n| 3/6:1 r:1/2 x3/5:1/2 r:1/2 1/5:3/2 |"))
                .containsExactly("A7 [0, 2]");
    }

    @Test
    void aBeatIsTheMetersOwn() {
        assertThat(stretches("meter: 12/8\nchords: A7\n| 3/6:3 r:1 1/5:2 |"))
                .as("a quarter is two thirds of a beat")
                .containsExactly("A7 [0, 1]");
    }

    @Test
    void notesStruckTogetherBelongToNone() {
        assertThat(stretches("chords: A7\n| 3/6:1 2/5+1/5:1 2/8:1 1/5:1 |")).containsExactly("A7 [0]", "A7 [3, 4]");
    }

    @Test
    void whereNoChordIsKnownThereIsNone() {
        assertThat(stretches("chords: N.C. | A7\n| 3/6:4 | 1/5:4 |")).containsExactly("A7 [1]");
        assertThat(stretches("| 3/6:4 | 1/5:4 |")).isEmpty();
    }
}
