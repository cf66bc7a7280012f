package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BendMarksTest {

    private static final String HOME = "home: A minor pentatonic\n";
    private static final String OVER_A7 = HOME + "chords: A7\n";

    private static List<Finding> bends(String text) {
        return new BendRule()
                .examine(SoloText.parse(text).analysis(), Settings.defaults())
                .toList();
    }

    private static Finding bend(String text) {
        List<Finding> found = bends(text);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "1/2, ¼",
        "1, ½",
        "3/2, ¾",
        "2, full",
        "5/2, 1¼",
        "3, 1½",
        "7/2, 1¾",
        "4, 2",
        "5, 2½",
        "6, 3",
        "2/3, ⅓",
        "5/4, 5/8"
    })
    void widthsCountWholeTones(String semitones, String words) {
        assertThat(BendWords.width(Fraction.parse(semitones))).isEqualTo(words);
    }

    @Test
    void aPreBendGoesFromTheFretToThePeak() {
        assertThat(bend(OVER_A7 + "| 3/7pb2r:2 r |").values())
                .containsExactly(
                        Map.entry("semitones", 2.0),
                        Map.entry("kind", "pre-bend-release"),
                        Map.entry("from", "D4"),
                        Map.entry("to", "E4"),
                        Map.entry("fromDegree", "4"),
                        Map.entry("toDegree", "5"),
                        Map.entry("chordTone", true));
    }

    @Test
    void aCurlLeadsNowhere() {
        assertThat(bend(OVER_A7 + "| 3/5b1/2:2 r |").values())
                .containsEntry("semitones", 0.5)
                .containsEntry("kind", "curl")
                .containsEntry("from", "C4")
                .containsEntry("to", "C4")
                .containsEntry("toDegree", "♭3")
                .containsEntry("chordTone", false);
    }

    @Test
    void withoutAChordNothingIsSaidOfChordTones() {
        Finding found = bend(HOME + "| 3/7b2:2 r |");
        assertThat(found.values()).doesNotContainKey("chordTone");
        assertThat(found.explanation()).doesNotContain("chord");
    }

    @Test
    void theExplanationNamesPitchesPlaceAndChord() {
        assertThat(bend(OVER_A7 + "| 4/7:1 3/7b2r:3 |").explanation())
                .contains("String 3, fret 7, bar 1", "beat 2", "a full bend from D4 (4) up to E4 (5)")
                .contains("let down to D4 (4)")
                .endsWith("Over A7 the peak is the 5, a chord tone.");
        assertThat(bend(HOME + "chords: D7\n| 3/7b2:4 |").explanation()).endsWith("Over D7 the peak is no chord tone.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"b3", "b4", "pb3r", "b(0,3,0,3)"})
    void wideBendsComeWithACaution(String bend) {
        assertThat(bend(HOME + "| 2/5" + bend + ":4 |").explanation()).contains("warm up first, stop if it hurts");
    }

    @ParameterizedTest
    @ValueSource(strings = {"b1/2", "b1", "b2", "b5/2"})
    void narrowOnesDoNot(String bend) {
        assertThat(bend(HOME + "| 2/5" + bend + ":4 |").explanation()).doesNotContain("hurts");
    }

    @Test
    void aBendUpToAStringThatRingsIsAUnison() {
        assertThat(bend(HOME + "| 2/5:4+4/7:1 3/7b2:3 |").values()).containsEntry("kind", "unison");
    }

    /** One string of a double stop bent while the other is held: common practice, no source. */
    @Test
    void anObliqueBendIsABendAndSaysWhatStays() {
        Finding found = bend(OVER_A7 + "| 3/7b2+1/5:4 |");
        assertThat(found.values()).containsEntry("kind", "bend");
        assertThat(found.explanation()).contains("A4 (1) is struck with it and stays where it is: an oblique bend.");
        assertThat(bend(OVER_A7 + "| 3/7b2+2/5:4 |").explanation()).doesNotContain("oblique");
        assertThat(bend(OVER_A7 + "| 3/7b2:4 |").explanation()).doesNotContain("oblique");
    }

    @Test
    void bothStringsOfADoubleStopMayBeBent() {
        assertThat(bends(OVER_A7 + "| 3/7b2+2/8b2:4 |"))
                .hasSize(2)
                .allSatisfy(found -> assertThat(found.values()).containsEntry("kind", "bend"))
                .extracting(Finding::explanation)
                .anySatisfy(explanation -> assertThat(explanation).contains("G4 (♭7) is bent with it."))
                .anySatisfy(explanation -> assertThat(explanation).contains("D4 (4) is bent with it."));
    }

    @Test
    void aStringSoundsNoSecondNoteBesideItsBendHoweverLongItIsWritten() {
        assertThat(bend(HOME + "| 3/7b2:4+4/7:1 3/9:3 |").values()).containsEntry("kind", "bend");
    }

    @Test
    void aDeadNoteIsNotHeldOver() {
        assertThat(bend(HOME + "| 3/7b2:4+1/5:1 x1/5:3 |").values()).containsEntry("kind", "bend");
    }

    @Test
    void whatIsLessSureIsSaidSo() {
        double written = bend(HOME + "| 3/7b2:4 |").confidence();
        assertThat(bend(HOME + "| 3/7b2:4+1/5:1 1/8:3 |").confidence()).isLessThan(written);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyBendOfAFingerIsFoundOnce(long seed) {
        SoloText text = RandomSolos.of(seed);
        List<Note> bent = text.solo().notes().stream()
                .filter(note -> note.bend().isPresent() && !note.isDead())
                .filter(note -> !note.has(Technique.WITH_BAR))
                .toList();
        assertThat(new BendRule().examine(text.analysis(), Settings.defaults()))
                .extracting(Finding::note)
                .isEqualTo(bent);
    }

    private static LongStream seeds() {
        return LongStream.range(0, 60);
    }
}
