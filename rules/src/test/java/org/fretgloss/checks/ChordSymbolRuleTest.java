package org.fretgloss.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.ChordMark;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;

class ChordSymbolRuleTest {

    private static final String BAR = " 3/5:1 3/7 2/5 3/7 |";

    /** Ten bars of a line over Am7, of which the symbol stands in the bar of that place. */
    private static List<Finding> withSymbolInBar(int place) {
        Solo solo = SoloText.parse("symbols: Am7\n|" + BAR.repeat(10)).solo();
        Fraction onset = solo.bars().get(place).start();
        Solo moved = new Solo(
                solo.title(),
                solo.part(),
                solo.tuning(),
                solo.tuningIsWritten(),
                solo.bars(),
                solo.notes(),
                List.of(new ChordMark(onset, solo.chords().get(0).chord())),
                solo.tempos());
        return new ChordSymbolRule()
                .examine(Analysis.of(moved, Given.NOTHING), Settings.defaults())
                .toList();
    }

    @Test
    void hintsAtEightBarsWithoutASymbol() {
        assertThat(withSymbolInBar(8))
                .singleElement()
                .satisfies(
                        finding -> assertThat(finding.explanation()).contains("The first 8 bars have no chord symbol"));
    }

    @Test
    void leavesAShortStretchAlone() {
        assertThat(withSymbolInBar(7)).isEmpty();
    }
}
