package org.fretgloss.solo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SoundingTogetherTest {

    @Test
    void tellsWhatRingsAndWhatIsStruckOverIt() {
        Solo solo = SoloText.parse("| 3/7:3+1/5:1 1/8:1 x1/5:1 1/5:1 |").solo();
        SoundingTogether sounding = SoundingTogether.of(solo);
        assertThat(sounding.with(solo.notes().get(0)))
                .extracting(Note::index)
                .as("not the dead note, and not the note that is struck as it ends")
                .containsExactly(1, 2);
        assertThat(sounding.with(solo.notes().get(2))).extracting(Note::index).containsExactly(0);
        assertThat(sounding.with(solo.notes().get(4))).isEmpty();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithAskingEveryPair(long seed) {
        Solo solo = RandomSolos.of(seed).solo();
        SoundingTogether sounding = SoundingTogether.of(solo);
        List<Note> pitched = solo.notes().stream().filter(Note::isPitched).toList();
        for (Note note : pitched) {
            assertThat(sounding.with(note))
                    .containsExactlyElementsOf(pitched.stream()
                            .filter(other -> !other.equals(note) && other.overlaps(note))
                            .toList());
        }
    }
}
