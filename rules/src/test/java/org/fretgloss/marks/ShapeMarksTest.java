package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Climax;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.SettingException;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;

class ShapeMarksTest {

    private static List<Finding> examine(Rule rule, String text) {
        SoloText written = SoloText.parse(text);
        return rule.examine(written.analysis(), Settings.defaults()).toList();
    }

    @Test
    void aSpaceStandsBetweenItsNotes() {
        assertThat(examine(new Space(), "| 3/5:1 3/7:1/2 r:5/2 | r:1 3/5:3 |"))
                .singleElement()
                .satisfies(space -> {
                    assertThat(space.note().index()).isEqualTo(1);
                    assertThat(space.lastNote().index()).isEqualTo(2);
                    assertThat(space.values()).isEqualTo(Map.of("beats", Fraction.of(7, 2)));
                    assertThat(space.explanation())
                            .startsWith(
                                    "After the note at bar 1 beat 2 nothing sounds for 3½ beats, until bar 2 beat 2:");
                });
    }

    @Test
    void aSpaceOfWholeBarsKeepsItsBeats() {
        assertThat(examine(new Space(), "meter: 3/4\n| 3/7:3 | r:3 | 3/5:3 |"))
                .singleElement()
                .satisfies(space -> {
                    assertThat(space.text()).contains("space 1 bar");
                    assertThat(space.values()).isEqualTo(Map.of("beats", Fraction.of(3)));
                });
    }

    @Test
    void theLeastSpaceHasBounds() {
        assertThatThrownBy(() -> Settings.of(new Space(), Map.of("from", "0")))
                .isInstanceOf(SettingException.class)
                .hasMessage("rule 'space': option 'from' takes 1/2 to 64, not '0'");
    }

    @Test
    void aClimaxTellsByHowMuchItStandsOut() {
        SoloText text = SoloText.parse("| 3/7:4 | 3/5:4 | 3/7:4 |");
        Solo solo = text.solo();
        Climax climax = new Climax(
                solo.bars().get(1), 2, solo.notes().get(1), solo.notes().get(2), 2.3849, -0.0012, 1.016);
        Analysis made = Analysis.of(solo, text.given());
        Analysis analysis = new Analysis(
                made.fingering(),
                made.homes(),
                made.harmony(),
                made.form(),
                made.boxes(),
                made.phrasing(),
                made.silences(),
                Optional.of(climax));
        assertThat(new ClimaxRule().examine(analysis, Settings.defaults()))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.lastNote().index()).isEqualTo(2);
                    assertThat(found.values())
                            .isEqualTo(Map.of("bars", 2, "density", 2.38, "register", 0.0, "bend", 1.02));
                    assertThat(found.explanation())
                            .isEqualTo(
                                    "Bars 2 to 3 stand out most from the solo's average: more notes per beat (+2.4), wider"
                                            + " bends (+1.0), in standard deviations.");
                    assertThat(found.confidence()).isBetween(0.78, 0.79);
                });
    }
}
