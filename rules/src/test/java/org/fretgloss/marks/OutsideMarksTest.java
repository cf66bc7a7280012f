package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class OutsideMarksTest {

    private static final String HOME = "home: A minor pentatonic\n";

    private static List<Finding> outside(Analysis analysis) {
        return new Outside().examine(analysis, Settings.defaults()).toList();
    }

    private static Finding outside(String text) {
        List<Finding> found = outside(SoloText.parse(text).analysis());
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void anEnclosureEndsOnItsTargetAndAnApproachOnItself() {
        Finding enclosure = outside(HOME + "chords: D7\n| 2/8:1/2 2/6 2/7:3 |");
        assertThat(enclosure.values()).isEqualTo(Map.of("degree", "♭6", "kind", "enclosure", "chord", "D7"));
        assertThat(enclosure.lastNote().index()).isEqualTo(2);
        Finding approach = outside(HOME + "chords: D7\n| 2/5:1/2 2/6 2/7:3 |");
        assertThat(approach.values()).containsEntry("kind", "approach");
        assertThat(approach.lastNote()).isEqualTo(approach.note());
    }

    @ParameterizedTest
    @CsvSource({"2/8, enclosure", "1/4, enclosure", "1/5, approach", "2/7, approach"})
    void aNeighbourLiesNoFartherThanAWholeTone(String first, String kind) {
        SoloText text = SoloText.parse(HOME + "chords: D7\n| " + first + ":1/2 2/6 2/7:3 |");
        assertThat(outside(text.analysis()).stream()
                        .filter(finding -> finding.note().index() == 1))
                .singleElement()
                .satisfies(finding -> assertThat(finding.values()).containsEntry("kind", kind));
    }

    @Test
    void withoutAChordNoneIsNamedAndItIsLessSure() {
        Finding unknown = outside(HOME + "| 1/6:2 2/5 |");
        assertThat(unknown.values()).isEqualTo(Map.of("degree", "♭2", "kind", "outside"));
        assertThat(unknown.confidence())
                .isBetween(0.5, outside(HOME + "chords: A7\n| 1/6:2 2/5 |").confidence() - 0.1);
    }

    @Test
    void theExplanationNamesWhatItLeadsTo() {
        assertThat(outside(HOME + "chords: A7 | D7\n| r:3 2/5:1/2 2/6 | 2/7:4 |")
                        .explanation())
                .contains("F4 is the ♭6, outside A minor pentatonic and A7")
                .endsWith("it leads by a semitone into F♯4, the 3 of D7.");
    }

    @Test
    void theClashIsNamedWhetherStruckOrHeld() {
        String clash = "the classic clash.";
        Finding struck = outside(HOME + "chords: A7 | D7\n| 4/7:4 | 3/6:2 4/7 |");
        assertThat(struck.explanation()).endsWith(clash);
        assertThat(struck.values()).isEqualTo(Map.of("degree", "3", "kind", "outside", "chord", "D7"));
        Finding held = outside(HOME + "chords: A7 | D7\n| r:2 3/6 | -:1 4/7:3 |");
        assertThat(held.explanation()).endsWith(clash);
        assertThat(held.values()).isEqualTo(struck.values());
    }

    /** The usual added notes, on a beat and left by leap, so that nothing else fits. */
    @ParameterizedTest
    @CsvSource({"3/8, ♭5", "2/7, 6", "1/7, 2"})
    void aBluesAddsNotesThatAnotherMusicDoesNot(String place, String degree) {
        String music = "| " + place + ":2 6/5:2 |";
        assertThat(outside(HOME + "chords: A7\n" + music).values())
                .containsEntry("degree", degree)
                .containsEntry("kind", "added");
        assertThat(outside(HOME + "chords: Am\n" + music).values())
                .containsEntry("degree", degree)
                .containsEntry("kind", "outside");
        assertThat(outside(HOME + "form: minor-twelve-bar A\n" + music).values())
                .as("a blues form is in force")
                .containsEntry("kind", "added");
    }

    /** Passing asks for three things at once; without one of them the note only stands there. */
    @ParameterizedTest
    @CsvSource({
        "5/7:1/2 5/6:1/2 5/5:3, passing",
        "5/7:1 5/6:1/2 5/5:5/2, added",
        "5/7:1/2 5/6:3/4 5/5:11/4, added",
        "5/7:1/2 5/6:1/2 5/5:1/4 4/5:11/4, added",
        "5/7:1/2 5/6:1/2 4/5:3, added",
        "5/7:1/2 5/6:1/2 r:1 5/5:2, added"
    })
    void passingIsShortOffTheBeatAndByStep(String music, String kind) {
        assertThat(outside(HOME + "chords: A7\n| " + music + " |").values()).containsEntry("kind", kind);
    }

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    /** Every note outside scale and chord has one finding, and no other note but the held 3 of a blues. */
    @ParameterizedTest
    @MethodSource("seeds")
    void findsWhatIsHeardOutsideAndNothingElse(long seed) {
        Analysis analysis = RandomSolos.of(seed).analysis();
        List<Note> expected = analysis.solo().notes().stream()
                .filter(note -> !note.grace() && !note.isDead() && isOutside(analysis, note))
                .toList();
        assertThat(outside(analysis).stream()
                        .map(Finding::note)
                        .filter(note -> isOutside(analysis, note))
                        .toList())
                .isEqualTo(expected);
        assertThat(outside(analysis).stream()
                        .filter(finding -> !isOutside(analysis, finding.note()))
                        .map(Finding::explanation))
                .allMatch(explanation -> explanation.endsWith("the classic clash."));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void writesAnAddedDegreeOnceInAPhrase(long seed) {
        Analysis analysis = RandomSolos.of(seed).analysis();
        Set<String> seen = new HashSet<>();
        for (Finding finding : outside(analysis)) {
            boolean added = "added".equals(finding.values().get("kind"));
            String inPhrase = analysis.phrasing().phraseOf(finding.note()) + " "
                    + finding.values().get("degree");
            assertThat(finding.text().isPresent()).isEqualTo(!added || seen.add(inPhrase));
        }
    }

    private static boolean isOutside(Analysis analysis, Note note) {
        boolean inScale = analysis.home().scale().contains(note.heardMidi());
        boolean inChord =
                analysis.chordAt(note).stream().anyMatch(chord -> chord.contains(Math.floorMod(note.heardMidi(), 12)));
        return !inScale && !inChord;
    }
}
