package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ColourMarksTest {

    private static final String MINOR = " 2/8:1 2/5 3/7 3/5 | 4/7:2 r:2 |";
    private static final String MAJOR = " 3/6:1 3/4 2/7 2/5 | 4/7:2 r:2 |";

    private static List<Finding> found(Analysis analysis) {
        return new Colour().examine(analysis, Settings.defaults()).toList();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void changesAlternateAndNeverOpenTheSolo(long seed) {
        Analysis analysis = RandomSolos.of(seed).analysis();
        List<Finding> findings = found(analysis);
        for (int i = 0; i < findings.size(); i++) {
            assertThat(findings.get(i).note().index()).isPositive();
            assertThat(analysis.startsPhrase(findings.get(i).note())).isTrue();
            if (i > 0
                    && analysis.homes()
                            .isSame(findings.get(i - 1).note(), findings.get(i).note())) {
                assertThat(findings.get(i).values())
                        .isNotEqualTo(findings.get(i - 1).values());
            }
        }
    }

    @Test
    void theExplanationCountsWhatSpeaksForTheColour() {
        SoloText text = SoloText.parse("home: A minor pentatonic\n|" + MINOR + MAJOR);
        assertThat(found(text.analysis()))
                .singleElement()
                .satisfies(finding -> assertThat(finding.explanation())
                        .isEqualTo("Bar 3 beat 1: the phrase turns to the colour of A major pentatonic,"
                                + " told by its 2 (once), 3 (once), 6 (once)."));
    }

    @Test
    void aPhraseThatSaysNothingPlainKeepsTheColourBefore() {
        String neither = " 4/7:1 1/5 2/5 3/7 | 4/7:2 r:2 |";
        SoloText text = SoloText.parse(
                "home: A minor pentatonic\nchords: A7\n|" + MINOR + MAJOR + neither + MAJOR + neither + MINOR);
        assertThat(found(text.analysis()))
                .extracting(finding ->
                        finding.note().bar().number() + " " + finding.text().orElseThrow())
                .containsExactly("3 maj pent", "11 min pent");
    }
}
