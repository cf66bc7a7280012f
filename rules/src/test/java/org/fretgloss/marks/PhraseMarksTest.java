package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PhraseMarksTest {

    private static final String HOME = "home: A minor pentatonic\n";

    private static List<Finding> found(Rule rule, String text) {
        return found(rule, SoloText.parse(HOME + text).analysis());
    }

    private static List<Finding> found(Rule rule, Analysis analysis) {
        return rule.examine(analysis, Settings.defaults()).toList();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPhraseHasItsLetterAndAtMostOneLanding(long seed) {
        Analysis analysis = RandomSolos.of(seed).analysis();
        assertThat(found(new PhraseRule(), analysis)).hasSameSizeAs(analysis.phrases());
        assertThat(found(new LandingRule(), analysis))
                .extracting(landing -> analysis.phrasing().phraseOf(landing.note()))
                .doesNotHaveDuplicates()
                .isSorted();
    }

    @Test
    void anAnswerSaysWhatItAnswers() {
        Finding answer = found(
                        new PhraseRule(), "| 4/7:1/2 3/5 3/7:1 2/5:1/2 3/7 r:1 | 4/7:1/2 3/5 3/7:1 2/5:1/2 4/7 r:1 |")
                .get(1);
        assertThat(answer.values()).isEqualTo(Map.of("letter", "A", "variantOf", "A", "answers", "A"));
        assertThat(answer.explanation())
                .isEqualTo("Bar 2 beat 1: phrase A′ begins. It takes up phrase A again. It answers phrase A:"
                        + " that one hangs in the air, this one comes to rest.");
    }

    @Test
    void landingOnTheThirdOfAChordThatHasJustChangedIsNamed() {
        assertThat(found(new LandingRule(), "symbols: A7 | D7\n| 4/7:1 3/5 3/7 2/5 | 3/11:2 r:2 |"))
                .singleElement()
                .satisfies(landing -> {
                    assertThat(landing.text()).contains("→ 3 of D7");
                    assertThat(landing.values()).isEqualTo(Map.of("degree", "6", "chord", "D7", "chordDegree", "3"));
                    assertThat(landing.explanation())
                            .isEqualTo("String 3, fret 11, bar 2 beat 1: the phrase lands on F♯4, the 3 of D7 and the 6"
                                    + " of the home A minor pentatonic. The chord has just changed from A7, and the 3"
                                    + " of the new one makes the change heard.");
                });
    }

    @Test
    void laterInTheChordOrOnItsRootItIsNot() {
        assertThat(found(new LandingRule(), "symbols: A7 | D7\n| 4/7:1 3/5 3/7 2/5 | 3/7:2 3/11 |"))
                .singleElement()
                .satisfies(landing -> assertThat(landing.explanation()).doesNotContain("changed"));
        assertThat(found(new LandingRule(), "symbols: A7 | D7\n| 4/7:1 3/5 3/7 2/5 | 3/7:2 r:2 |"))
                .singleElement()
                .satisfies(landing -> assertThat(landing.explanation()).doesNotContain("changed"));
    }

    @Test
    void withoutChordsTheHomeNamesTheLanding() {
        assertThat(found(new LandingRule(), "| 4/7:1 3/5 3/7 2/5 |"))
                .singleElement()
                .satisfies(landing -> {
                    assertThat(landing.text()).contains("→ 5");
                    assertThat(landing.values()).isEqualTo(Map.of("degree", "5"));
                });
    }

    @Test
    void aBoundaryFoundByWeighingIsLessSureThanABreath() {
        String phrase = "4/7:1 3/5 3/7 2/5 | 2/8:1 2/5 3/7:2 | ";
        assertThat(found(new PhraseRule(), "| " + phrase.repeat(3)))
                .extracting(Finding::confidence)
                .isSortedAccordingTo((one, other) -> Double.compare(other, one))
                .hasSize(3);
    }
}
