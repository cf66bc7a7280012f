package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.score;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.pitch.ChordKind;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.ChordMark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ChordMarksTest {

    private static final String FULL = note("A4", 4 * QUARTER);

    /** The tones that the MusicXML 4.0 schema gives for its kind-values, in the words of its documentation. */
    @ParameterizedTest(name = "{0} has {1}")
    @CsvSource({
        "major, 1 3 5",
        "minor, 1 ♭3 5",
        "augmented, 1 3 ♯5",
        "diminished, 1 ♭3 ♭5",
        "dominant, 1 3 5 ♭7",
        "major-seventh, 1 3 5 7",
        "minor-seventh, 1 ♭3 5 ♭7",
        "half-diminished, 1 ♭3 ♭5 ♭7",
        "major-sixth, 1 3 5 6",
        "dominant-ninth, 1 3 5 ♭7 9",
        "dominant-13th, 1 3 5 ♭7 9 11 13",
        "suspended-fourth, 1 4 5",
        "power, 1 5"
    })
    void readsKinds(String kind, String tones) throws ScoreException {
        ChordSymbol chord = only(harmony("A", kind, "")).chord().orElseThrow();
        assertThat(String.join(" ", chord.tones().stream().map(Degree::toString).toList()))
                .isEqualTo(tones);
        assertThat(chord.root()).isEqualTo(PitchClass.parse("A"));
    }

    @ParameterizedTest
    @EnumSource(ChordKind.class)
    void knowsEveryKindOfTheSchema(ChordKind kind) throws ScoreException {
        String score = notation(harmony("A", kind.value(), "") + FULL);
        assertThat(read(score).solo().chords()).hasSize(1);
        assertThat(read(score).solo().chords().get(0).chord().isPresent())
                .isEqualTo(!kind.degrees().isEmpty());
        assertThat(notices(score)).hasSize(kind == ChordKind.OTHER ? 1 : 0);
    }

    /** Added degrees are measured from a dominant chord, altered ones from the kind (W3C, degree-alter). */
    @ParameterizedTest(name = "{0} with {1} {2} {3}")
    @CsvSource({
        "dominant, add, 9, 1, A7♯9",
        "dominant, alter, 5, -1, A7♭5",
        "major, add, 7, 0, A7",
        "major, add, 7, 1, Amaj7",
        "minor-seventh, alter, 5, -1, Am7♭5",
        "major, subtract, 3, 0, A5"
    })
    void appliesDegrees(String kind, String type, int value, int alter, String name) throws ScoreException {
        String degree = ("<degree><degree-value>%d</degree-value><degree-alter>%d</degree-alter>"
                        + "<degree-type>%s</degree-type></degree>")
                .formatted(value, alter, type);
        assertThat(only(harmony("A", kind, degree)).chord()).hasToString("Optional[" + name + "]");
    }

    @Test
    void readsAlteredRootsAndBasses() throws ScoreException {
        String root = "<root><root-step>B</root-step><root-alter>-1</root-alter></root><kind>major</kind>"
                + "<bass><bass-step>D</bass-step></bass>";
        assertThat(only("<harmony>" + root + "</harmony>").chord()).hasToString("Optional[B♭/D]");
    }

    @Test
    void placesAChordByItsOffset() throws ScoreException {
        String late = harmony("D", "dominant", "<offset>24</offset>");
        assertThat(chords(notation(FULL, harmony("A", "dominant", "") + late + FULL)))
                .containsExactly("4 A7", "6 D7");
    }

    @ParameterizedTest
    @CsvSource({
        "<kind>none</kind>",
        "<kind text='N.C.'>none</kind>",
        "<kind text='N.C.'>major</kind>",
        "<kind text='N. C.'>other</kind>",
        "<kind>other</kind>",
        "<kind>pedal</kind>"
    })
    void endsTheChordWhereThereIsNone(String kind) throws ScoreException {
        String noChord = "<harmony><root><root-step text=''>C</root-step></root>" + kind + "</harmony>";
        assertThat(chords(notation(harmony("A", "dominant", "") + FULL, noChord + FULL)))
                .containsExactly("0 A7", "4 N.C.");
    }

    @Test
    void readsAnEmptyKindAsItIsPrinted() throws ScoreException {
        assertThat(only("<harmony><root><root-step>G</root-step></root><kind text=\"aug\"/></harmony>")
                        .chord())
                .hasToString("Optional[Gaug]");
        assertThat(only("<harmony><root><root-step>G</root-step></root><kind/></harmony>")
                        .chord())
                .hasToString("Optional[G]");
    }

    @Test
    void endsTheChordWhereAnotherBeginsThatCannotBeTold() throws ScoreException {
        String function = "<harmony><function>IV</function><kind>major</kind></harmony>";
        String odd = "<harmony><root><root-step>G</root-step></root><kind text=\"?\">glorious</kind></harmony>";
        String score = notation(harmony("A", "dominant", "") + FULL, function + FULL, odd + FULL);
        assertThat(chords(score)).containsExactly("0 A7", "4 N.C.", "8 N.C.");
        assertThat(notices(score))
                .containsExactly(
                        "the value 'glorious' of <kind> is not understood here and is passed over (bar 3)",
                        "a chord symbol without a root is no chord that can be told: from there on there is none (bar 2)",
                        "a chord symbol that does not say its tones is no chord that can be told: from there on there is none (bar 3)");
    }

    @Test
    void leavesAlternativesAndStackedChordsAside() throws ScoreException {
        String alternate = harmony("D", "minor", "").replace("<harmony>", "<harmony type=\"alternate\">");
        String stacked = "<harmony><root><root-step>A</root-step></root><kind>dominant</kind>"
                + "<root><root-step>E</root-step></root><kind>minor</kind><degree><degree-value>9</degree-value>"
                + "<degree-alter>0</degree-alter><degree-type>add</degree-type></degree></harmony>";
        assertThat(chords(notation(stacked + FULL, alternate + FULL))).containsExactly("0 A7");
    }

    @Test
    void takesTheSoloPartsOwnSymbolsFirst() throws ScoreException {
        assertThat(chords(score(
                        part("Solo", attributes(FOUR_FOUR), harmony("A", "dominant", "") + FULL),
                        part(
                                "Keys",
                                attributes(FOUR_FOUR),
                                harmony("E", "minor", "") + harmony("D", "minor", "<offset>12</offset>") + FULL))))
                .containsExactly("0 A7");
    }

    @Test
    void elseThoseOfThePartThatHasMost() throws ScoreException {
        String keys = harmony("E", "minor", "") + note("A4", 2 * QUARTER) + harmony("D", "minor", "");
        assertThat(chords(score(
                        part("Solo", attributes(FOUR_FOUR), note("A4", QUARTER), FULL),
                        part("Bass", attributes(FOUR_FOUR), note("A2", QUARTER), harmony("G", "major", "") + FULL),
                        part("Keys", attributes(FOUR_FOUR), note("A4", QUARTER), keys + note("A4", 2 * QUARTER)))))
                .containsExactly("1 Em", "3 Dm");
    }

    @Test
    void takesOneOfTwoThatStandAtOneMoment() throws ScoreException {
        assertThat(chords(notation(harmony("A", "dominant", "") + harmony("A", "major", "") + FULL)))
                .containsExactly("0 A7");
    }

    private static String harmony(String root, String kind, String rest) {
        return "<harmony><root><root-step>%s</root-step></root><kind>%s</kind>%s</harmony>".formatted(root, kind, rest);
    }

    private static ChordMark only(String harmony) throws ScoreException {
        List<ChordMark> marks = read(notation(harmony + FULL)).solo().chords();
        assertThat(marks).hasSize(1);
        return marks.get(0);
    }

    private static List<String> chords(String score) throws ScoreException {
        List<String> chords = new ArrayList<>();
        read(score)
                .solo()
                .chords()
                .forEach(mark -> chords.add(
                        mark.onset() + " " + mark.chord().map(ChordSymbol::name).orElse("N.C.")));
        return chords;
    }
}
