package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

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

    @Test
    void aBoxIsTheLessSureTheMoreLiesOutside() {
        assertThat(boxes(TWO_BOXES))
                .extracting(Finding::confidence)
                .as("all of three notes inside, then three of four")
                .containsExactly(1.0, 0.875);
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
                            + " leaves the box and comes back.");
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
