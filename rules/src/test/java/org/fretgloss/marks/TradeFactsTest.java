package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Rulebook;
import org.junit.jupiter.api.Test;

/** What every teacher of blues guitar knows: common practice, no source. */
class TradeFactsTest {

    private static List<Gloss> glosses(String rule, String chords, String notes) {
        SoloText example = SoloText.parse("home: A minor pentatonic\nchords: " + chords + "\n| " + notes + " |");
        return Rulebook.of(new BuiltInMarks()).examine(example.analysis(), Map.of()).glosses().stream()
                .filter(gloss -> gloss.rule().equals(rule))
                .toList();
    }

    @Test
    void theMinorThirdBentASemitoneOverTheI7IsTheMajorThird() {
        assertThat(glosses("third", "A7", "3/5b1:4")).singleElement().satisfies(gloss -> {
            assertThat(gloss.text()).contains("½ ♭3→3");
            assertThat(gloss.finding().values()).containsEntry("by", "bend").containsEntry("of", "home");
        });
        assertThat(glosses("bend", "A7", "3/5b1:4"))
                .singleElement()
                .satisfies(gloss -> assertThat(gloss.finding().values())
                        .containsEntry("from", "C4")
                        .containsEntry("to", "C♯4")
                        .containsEntry("chordTone", true));
    }

    @Test
    void string2Fret17BentAToneAndAHalfGivesG() {
        assertThat(glosses("bend", "A7", "2/17b3:4")).singleElement().satisfies(gloss -> {
            assertThat(gloss.text()).contains("1½ 5→♭7");
            assertThat(gloss.finding().values()).containsEntry("from", "E5").containsEntry("to", "G5");
        });
    }

    @Test
    void theMajorThirdOfAStandsAtString3Fret6InsideBox1() {
        SoloText example = SoloText.parse("home: A minor pentatonic\n| 3/6:1 3/5 2/5 2/8 |");
        assertThat(example.analysis().home().added()).singleElement().satisfies(added -> {
            assertThat(added.degree()).hasToString("3");
            assertThat(added.pitch()).hasToString("C♯");
        });
        assertThat(glosses("box", "A7", "3/6:1 3/5 2/5 2/8"))
                .singleElement()
                .satisfies(gloss -> assertThat(gloss.text()).contains("box 1 fr5"));
        assertThat(glosses("reach", "A7", "3/6:1 3/5 2/5 2/8")).isEmpty();
    }

    @Test
    void thirdRootAndSeventhOutlineADominantChord() {
        assertThat(glosses("outline", "A7", "3/6:1 1/5 2/8:2")).singleElement().satisfies(gloss -> {
            assertThat(gloss.text()).contains("A7: 3 1 ♭7");
            assertThat(gloss.finding().values()).containsEntry("degrees", List.of("3", "1", "♭7"));
        });
    }
}
