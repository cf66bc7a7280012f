package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.BoxSpan;
import org.fretgloss.neck.StringFret;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoxMarksTest {

    private static final String TWO_BOXES = """
            home: A minor pentatonic
            | 3/7:1 3/5 4/7 r | 2/13:1 2/15 1/12 1/17 |
            """;

    private static List<Finding> boxes(String text) {
        return new BoxRule()
                .examine(SoloText.parse(text).analysis(), Settings.defaults())
                .toList();
    }

    private static List<Finding> reaches(SoloText text) {
        return new Reach().examine(text.analysis(), Settings.defaults()).toList();
    }

    @Test
    void aBoxLastsUntilTheNextBegins() {
        List<Finding> found = boxes(TWO_BOXES);
        assertThat(found).extracting(finding -> finding.note().index()).containsExactly(0, 3);
        assertThat(found).extracting(finding -> finding.lastNote().index()).containsExactly(2, 6);
        assertThat(found.get(1).values()).isEqualTo(Map.of("box", 4, "lowestFret", 12, "highestFret", 15));
        assertThat(found.get(1).explanation())
                .isEqualTo("From bar 2 beat 1 on the hand is in box 4 of A minor pentatonic: frets 12 to 15.");
    }

    private static double sureness(String music) {
        List<Finding> boxes = boxes("home: A minor pentatonic\n" + music);
        return boxes.get(boxes.size() - 1).confidence();
    }

    /** String 2 fret 5 lies in box 5 (2 to 5) and in box 1 (5 to 8). */
    @Test
    void oneNoteInTwoBoxesTellsNothing() {
        assertThat(sureness("| 2/5:4 |")).isEqualTo(0.5);
    }

    /** Fret 6 lies in box 1 alone, but box 2 begins one fret above. */
    @Test
    void oneNoteInOneBoxTellsLittle() {
        assertThat(sureness("| 3/6:4 |")).isEqualTo(0.5 + 0.5 / 3);
    }

    /** For frets 5 and 8 of box 1, box 2 (7 to 10) must reach two frets down. */
    @Test
    void twoNotesTellSomething() {
        assertThat(sureness("| 1/5:2 1/8 |")).isEqualTo(0.75);
    }

    /** Six notes of box 1 lie on fret 5, two frets below box 2: 12 frets; box 5 would reach farther up. */
    @Test
    void aWholeBoxIsSure() {
        assertThat(sureness("| 6/5:1/3 6/8 5/5 5/7 4/5 4/7 3/5 3/7 2/5 2/8 1/5 1/8 |"))
                .isCloseTo(0.5 + 0.5 * 12 / 14, within(1e-9));
    }

    /** Frets 7 and 8 lie in box 1 (5 to 8) and in box 2 (7 to 10). */
    @Test
    void aRunInTwoBoxesTellsNothingHoweverLong() {
        assertThat(sureness("| 5/7:1/2 4/7 3/7 2/8 1/8 2/8 3/7 4/7 | 5/7:1/2 4/7 3/7 2/8 1/8 2/8 3/7 4/7 |"))
                .isEqualTo(0.5);
    }

    /** Box 2 saves box 1's reach of 2 + 2 frets and costs a change of 3 after the breath; box 3 (9 to 13) reaches 1. */
    @Test
    void aChangeThatIsHardlyWorthItIsHardlySure() {
        assertThat(sureness("| 1/5:1 1/8 1/5 r | 1/10 1/10 1/8:2 |")).isEqualTo(0.5 + 0.5 / 3);
    }

    /** Box 4 (12 to 15) reaches 2 frets once, box 5 (14 to 17) 1 and 2; and one note of four lies outside. */
    @Test
    void aBoxIsTheLessSureTheMoreLiesOutside() {
        assertThat(boxes(TWO_BOXES).get(1).confidence()).isEqualTo(0.5 + 0.5 * 0.75 / 3);
    }

    @Test
    void aMajorHomeIsFingeredInTheBoxesBelow() {
        assertThat(boxes("home: C major pentatonic\n| 3/5:1 2/5 2/8 1/8 |"))
                .singleElement()
                .extracting(Finding::explanation)
                .asString()
                .contains("box 1 of A minor pentatonic, whose boxes finger C major pentatonic: frets 5 to 8");
    }

    @Test
    void aReachTellsHowFar() {
        assertThat(reaches(SoloText.parse(TWO_BOXES))).singleElement().satisfies(reach -> {
            assertThat(reach.values()).isEqualTo(Map.of("frets", 2));
            assertThat(reach.text()).contains("reach +2");
            assertThat(reach.explanation())
                    .isEqualTo("At bar 2 beat 4 string 1 fret 17 lies 2 frets above box 4 (frets 12 to 15): the hand"
                            + " reaches out of the box.");
        });
    }

    private static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFrettedNoteOutsideItsBoxIsFoundAndExcursionsAreWrittenAtTheirFirst(long seed) {
        SoloText text = RandomSolos.of(seed);
        Analysis analysis = text.analysis();
        Map<Note, Boolean> writtenAt = new HashMap<>();
        for (BoxSpan span : analysis.boxes().spans()) {
            List<Note> fretted = span.notes(analysis.solo()).stream()
                    .filter(note ->
                            !note.isDead() && !note.at().map(StringFret::isOpen).orElse(true))
                    .toList();
            for (int i = 0; i < fretted.size(); i++) {
                int side = sideOf(span, fretted.get(i));
                if (side != 0) {
                    writtenAt.put(fretted.get(i), i == 0 || sideOf(span, fretted.get(i - 1)) != side);
                }
            }
        }
        assertThat(reaches(text).stream()
                        .collect(Collectors.toMap(
                                Finding::note, finding -> finding.text().isPresent())))
                .isEqualTo(writtenAt);
    }

    private static int sideOf(BoxSpan span, Note note) {
        int fret = note.at().orElseThrow().fret();
        if (fret < span.box().lowestFret()) {
            return -1;
        }
        return fret > span.box().highestFret() ? 1 : 0;
    }
}
