package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Finding.Absorbed;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ThirdMarksTest {

    private static final String OVER_A7 = "home: A minor pentatonic\nchords: A7\n";

    private static Finding third(String text) {
        List<Finding> found = new Third()
                .examine(SoloText.parse(text).analysis(), Settings.defaults())
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void aBendHoldsBothNotesAndGivesItsTextAway() {
        Finding third = third(OVER_A7 + "| 4/7:1 3/5b1:3 |");
        assertThat(third.note()).isEqualTo(third.lastNote());
        assertThat(third.absorbs()).containsExactly(new Absorbed("bend", third.note()));
        assertThat(third.values()).isEqualTo(Map.of("by", "bend", "of", "home"));
    }

    @Test
    void theBendStaysInTheDataAndIsNotWritten() {
        SoloText text = SoloText.parse(OVER_A7 + "| 3/5b1:4 |");
        List<Gloss> moves = Rulebook.of(new BuiltInMarks()).examine(text.analysis(), Map.of()).glosses().stream()
                .filter(gloss -> gloss.rule().equals("bend") || gloss.rule().equals("third"))
                .toList();
        assertThat(moves).extracting(Gloss::rule).containsExactly("bend", "third");
        assertThat(moves).extracting(Gloss::text).containsExactly(Optional.empty(), Optional.of("½ ♭3→3"));
    }

    @Test
    void aMoveOverTwoNotesStandsOnTheFirstAndAbsorbsNothing() {
        Finding third = third(OVER_A7 + "| 3/5:1 h3/6:1 4/7:2 |");
        assertThat(third.note().index()).isZero();
        assertThat(third.lastNote().index()).isEqualTo(1);
        assertThat(third.absorbs()).isEmpty();
        assertThat(third.values()).isEqualTo(Map.of("by", "hammer-on", "of", "home"));
    }

    @Test
    void aMoveFromAGraceNoteStandsOnIt() {
        Finding third = third(OVER_A7 + "| g3/5 3/6:2 4/7:2 |");
        assertThat(third.note().grace()).isTrue();
        assertThat(third.lastNote().index()).isEqualTo(1);
        assertThat(third.values()).containsEntry("by", "grace");
    }

    @Test
    void theExplanationSaysWhoseThirdItIs() {
        assertThat(third(OVER_A7 + "| 3/5:1 s3/6:1 4/7:2 |").explanation())
                .contains("C4 moves up to C♯4 by a slide", "the ♭3 of the home tonic A becoming its 3 over A7");
        assertThat(third("home: A minor pentatonic\nchords: F7\n| 3/1:1 3/2:3 |")
                        .explanation())
                .as("spelled against the chord, not as the home's 7")
                .contains("A♭3 moves up to A3 as two struck notes", "the ♭3 of F7 becoming its 3");
    }

    @Test
    void aChordOnlyStraightAwayUnderTheNextBarStillCounts() {
        assertThat(third("home: A minor pentatonic\nchords: A7 | A7\n| r:3 3/5:1 | 3/6:4 |")
                        .note()
                        .bar()
                        .number())
                .isEqualTo("1");
    }

    @ParameterizedTest
    @CsvSource({"A7, home", "A, home", "A13, home", "D7, chord", "Gmaj7, chord"})
    void belongsToTheHomeOnItsOwnTonic(String chord, String of) {
        Map<String, String> moves = Map.of("A", "3/5:1 3/6:3", "D", "2/6:1 2/7:3", "G", "3/3:1 3/4:3");
        Finding third =
                third("home: A minor pentatonic\nchords: " + chord + "\n| " + moves.get(chord.substring(0, 1)) + " |");
        assertThat(third.values()).containsEntry("of", of);
    }

    @Test
    void withoutAChordItIsLessSureButStillWritten() {
        double known = third(OVER_A7 + "| 3/5:1 3/6:3 |").confidence();
        assertThat(third("home: A minor pentatonic\n| 3/5:1 3/6:3 |").confidence())
                .isBetween(0.5, known - 0.1);
    }

    private static LongStream seeds() {
        return RandomLines.seeds();
    }

    private static List<Finding> thirds(long seed) {
        return new Third().examine(RandomLines.of(seed), Settings.defaults()).toList();
    }

    @Test
    void theLinesMadeUpHoldMovesOfEveryKind() {
        assertThat(seeds().boxed()
                        .flatMap(seed -> thirds(seed).stream())
                        .map(third ->
                                third.values().get("by") + " " + third.values().get("of")))
                .contains("bend home", "bend chord", "hammer-on home", "slide home", "grace home", "struck home")
                .contains("struck chord")
                .hasSizeGreaterThan(100);
    }

    /** What every third must be, worked out again from the definition. */
    @ParameterizedTest
    @MethodSource("seeds")
    void isAlwaysASemitoneFromAMinorToAMajorThirdUnderOneMajorChord(long seed) {
        Analysis analysis = RandomLines.of(seed);
        thirds(seed).forEach(third -> {
            Note first = third.note();
            Note last = third.lastNote();
            Optional<ChordSymbol> chord = analysis.chordAt(first);
            int root = "home".equals(third.values().get("of"))
                    ? analysis.home().scale().tonic().chroma()
                    : chord.orElseThrow().root().chroma();
            assertThat(Math.floorMod(last.heardMidi() - root, 12)).isEqualTo(4);
            assertThat(first.equals(last) ? first.midi() : first.endMidi()).isEqualTo(last.heardMidi() - 1);
            assertThat(chord.stream())
                    .allMatch(sounds -> sounds.hasMajorThird() && sounds.root().chroma() == root);
            assertThat(analysis.chordAt(last)).isEqualTo(chord);
            assertThat(first.end()).isGreaterThanOrEqualTo(last.onset());
        });
    }
}
