package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PhrasingTest {

    private static final String TWO_BARS = "4/7:1 3/5 3/7 2/5 | 2/8:1 2/5 3/7:2 |";

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static Phrasing phrasing(Solo solo) {
        return Phrasing.of(solo, Silences.of(solo));
    }

    /** Where the phrases of an example begin, as indexes of notes. */
    private static List<Integer> starts(String example) {
        return starts(SoloText.parse(example).solo());
    }

    private static List<Integer> starts(Solo solo) {
        return phrasing(solo).phrases().stream()
                .map(phrase -> phrase.first().index())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void phrasesHoldEveryNoteOnceAndBreathsPartThem(long seed) {
        Solo solo = RandomSolos.of(seed).solo();
        Phrasing phrasing = phrasing(solo);
        assertThat(phrasing.phrases().stream().flatMap(phrase -> phrase.notes().stream()))
                .containsExactlyElementsOf(solo.notes());
        for (Silence silence : Silences.of(solo)) {
            if (!silence.beats().isLessThan(Fraction.ONE)) {
                assertThat(phrasing.startsAt(silence.after())).isTrue();
            }
        }
        for (int i = 0; i < phrasing.phrases().size(); i++) {
            for (Note note : phrasing.phrases().get(i).notes()) {
                assertThat(phrasing.phraseOf(note)).isEqualTo(i);
                assertThat(phrasing.startsAt(note))
                        .isEqualTo(note.equals(phrasing.phrases().get(i).first()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aSingleMomentIsAPhraseOnlyBetweenBreaths(long seed) {
        List<Phrase> phrases = phrasing(RandomSolos.of(seed).solo()).phrases();
        for (int i = 0; i < phrases.size(); i++) {
            boolean betweenBreaths = phrases.get(i).afterBreath()
                    && (i + 1 == phrases.size() || phrases.get(i + 1).afterBreath());
            long moments =
                    phrases.get(i).notes().stream().map(Note::onset).distinct().count();
            assertThat(betweenBreaths || moments > 1).isTrue();
        }
    }

    @Test
    void theSameLineHigherUpHasTheSamePhrases() {
        String line = "| %1$d/7:1 %1$d/5 %1$d/8 %1$d/7 | %1$d/5:2 %1$d/8:1/2 %1$d/10 %1$d/8:1 ";
        String low = line.formatted(6).repeat(6) + "|";
        String high = line.formatted(1).repeat(6) + "|";
        assertThat(starts(high)).isEqualTo(starts(low)).hasSizeGreaterThan(1);
    }

    @Test
    void noNotesAreNoPhrase() {
        assertThat(starts("| r:4 |")).isEmpty();
    }

    @Test
    void oneNoteIsAPhrase() {
        assertThat(starts("| r:1 3/5:1 r:2 | r:4 |")).containsExactly(0);
    }

    @Test
    void aBreathIsABeatOfTheMeter() {
        assertThat(starts("meter: 12/8\n| 3/5:3/2 r:1 3/7:1/2 3/5:3/2 r:3/2 |")).containsExactly(0);
        assertThat(starts("meter: 12/8\n| 3/5:3/2 r:3/2 3/7:3/2 3/5:3/2 |")).containsExactly(0, 1);
    }

    @Test
    void aPhraseBeginsWithTheGraceNoteThatLeansOnIt() {
        assertThat(starts("| 3/5:1 3/7 r:1 g2/5 2/8:1 |")).containsExactly(0, 2);
    }

    @Test
    void aDeadNoteEndsABreathlessStretchOnlyByItsRest() {
        assertThat(starts("| 3/5:1 x3/7 x3/7 3/5 | r:2 x3/5:1 3/7 |")).containsExactly(0, 4);
    }

    @Test
    void upToThreeBarsInOneBreathAreOnePhrase() {
        assertThat(starts("| 4/7:1 3/5 3/7 2/5 | 2/8:3 2/5:1 | 3/7:1 2/5 2/8 1/5 | 1/8:4 |"))
                .containsExactly(0);
    }

    @Test
    void aLongStretchIsDividedWhereItsLongNotesEndAndItsRhythmComesAgain() {
        assertThat(starts("| " + TWO_BARS.repeat(4))).containsExactly(0, 7, 14, 21);
    }

    @Test
    void phrasesWithAPickUpBeginOnTheirPickUps() {
        String line = "2/8:1 2/5 3/7 3/5 | ";
        String phrase = line + "4/7:3 2/5:1 | ";
        assertThat(starts("| 2/5:1 | " + phrase.repeat(3) + line + "4/7:4 |")).containsExactly(0, 6, 12, 18);
    }

    @Test
    void doubleStopsAreStruckAtOnceAndNeverParted() {
        String phrase = "2/8+1/8:1 2/5+1/5 3/7+2/8 3/5+2/5 | 2/8+1/8:1 2/5+1/5 3/7+2/8:2 | ";
        List<Integer> starts = starts("| " + phrase.repeat(4));
        assertThat(starts).isEqualTo(IntStream.range(0, 4).mapToObj(i -> 14 * i).toList());
    }

    @Test
    void aThousandNotesInABarAreOnePhraseOfThatBreath() {
        assertThat(starts("| " + "3/5:1/256 ".repeat(1000) + "r:24/256 |")).containsExactly(0);
    }
}
