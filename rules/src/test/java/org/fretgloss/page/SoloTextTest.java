package org.fretgloss.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Progression;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoloTextTest {

    private static Solo solo(String text) {
        return SoloText.parse(text).solo();
    }

    private static Note note(Solo solo, int index) {
        return solo.notes().get(index);
    }

    @Test
    void placesNotesInTime() {
        Solo solo = solo("| 3/7:1 r 2/8:1/2 2/10 1/8:1 | 1/5:4 |");
        assertThat(solo.notes())
                .extracting(Note::onset)
                .containsExactly(Fraction.ZERO, Fraction.of(2), Fraction.of(5, 2), Fraction.of(3), Fraction.of(4));
        assertThat(solo.notes())
                .extracting(Note::duration)
                .containsExactly(Fraction.ONE, Fraction.of(1, 2), Fraction.of(1, 2), Fraction.ONE, Fraction.of(4));
        assertThat(note(solo, 2).beat()).isEqualTo(Fraction.of(7, 2));
        assertThat(note(solo, 4).bar().number()).isEqualTo("2");
    }

    @Test
    void soundsWhatTheTuningSays() {
        assertThat(note(solo("3/6:4"), 0).midi()).isEqualTo(61);
        assertThat(note(solo("capo: 2\n3/6:4"), 0).midi()).isEqualTo(63);
        assertThat(note(solo("tuning: E4 B3 G3 D3 A2 D2\n6/0:4"), 0).midi()).isEqualTo(38);
    }

    @Test
    void aPitchMayStandForStringAndFret() {
        Note note = note(solo("hBb3b2:4"), 0);
        assertThat(note.pitch()).hasToString("B♭3");
        assertThat(note.at()).isEmpty();
        assertThat(note.heardMidi()).isEqualTo(60);
    }

    @Test
    void spellsAgainstTheStatedHome() {
        assertThat(note(solo("home: A minor pentatonic\n3/6:4"), 0).pitch()).hasToString("C♯4");
    }

    @Test
    void readsHowNotesAreBegun() {
        Solo solo = solo("3/5:1/2 h3/7 p3/5 s3/9 t1/12 xv2/5 n4/12 w2/8b2");
        assertThat(solo.notes())
                .extracting(Note::attack)
                .containsExactly(
                        Attack.PICKED,
                        Attack.HAMMERED_ON,
                        Attack.PULLED_OFF,
                        Attack.SLID,
                        Attack.TAPPED,
                        Attack.PICKED,
                        Attack.PICKED,
                        Attack.PICKED);
        assertThat(note(solo, 5).techniques()).containsExactlyInAnyOrder(Technique.DEAD, Technique.VIBRATO);
        assertThat(note(solo, 6).techniques()).containsExactly(Technique.HARMONIC);
        assertThat(note(solo, 7).techniques()).containsExactly(Technique.WITH_BAR);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "b2; 0 2",
                "b2r; 0 2 0",
                "pb2; 2",
                "pb2r; 2 0",
                "b2rb2; 0 2 0 2",
                "b1/2; 0 1/2",
                "b(0,2,4); 0 2 4",
                "pb3/2r; 3/2 0"
            })
    void readsBends(String shorthand, String heights) {
        List<Fraction> course =
                List.of(heights.split(" ")).stream().map(Fraction::parse).toList();
        assertThat(note(solo("3/7" + shorthand + ":4"), 0).bend()).contains(new Bend(course));
    }

    @Test
    void joinsTiedNotesAndCountsTheirElements() {
        Solo solo = solo("| 3/7:1 r:1 2/8+1/8:2 | -:1 g3/5 h3/7:3 |");
        assertThat(solo.notes())
                .extracting(Note::ordinal)
                .as("one, a rest, a chord of two, its two continuations, a grace note, a note")
                .containsExactly(1, 3, 4, 7, 8);
        assertThat(note(solo, 1).duration()).isEqualTo(Fraction.of(3));
        assertThat(note(solo, 2).written().elements()).containsExactly(4, 6);
    }

    @Test
    void aGraceNoteTakesItsMainNotesPlace() {
        Solo solo = solo("| 3/7:4 gh3/5 | 3/6:4 |");
        Note grace = note(solo, 1);
        assertThat(grace.grace()).isTrue();
        assertThat(grace.duration()).isEqualTo(Fraction.ZERO);
        assertThat(grace.bar().number()).isEqualTo("2");
        assertThat(solo.mainOf(grace)).isEqualTo(note(solo, 2));
    }

    @Test
    void aNoteOfAChordMaySoundOn() {
        Solo solo = solo("3/7b2:2+1/5:1 1/8 r:2");
        assertThat(solo.notes()).extracting(Note::end).containsExactly(Fraction.of(2), Fraction.ONE, Fraction.of(2));
        assertThat(note(solo, 0).overlaps(note(solo, 2))).isTrue();
    }

    @Test
    void notesStruckTogetherStandLowStringFirst() {
        assertThat(solo("1/8+2/8:4").notes())
                .extracting(note -> note.at().orElseThrow())
                .containsExactly(new StringFret(2, 8), new StringFret(1, 8));
    }

    @Test
    void aShortFirstBarIsAPickUp() {
        Solo solo = solo("| 2/8:1 | 3/7:4 |");
        assertThat(solo.bars()).extracting(Bar::number).containsExactly("0", "1");
        assertThat(note(solo, 0).beat()).isEqualTo(Fraction.of(4));
    }

    @Test
    void theMeterMayChange() {
        Solo solo = solo("meter: 12/8\n| 2/8:6 |\n| (3/4) 2/8:3 |");
        assertThat(solo.bars()).extracting(Bar::meter).containsExactly(new Meter(12, 8), new Meter(3, 4));
    }

    @Test
    void readsWhatIsGiven() {
        SoloText text = SoloText.parse("""
                home: D dorian
                chords: Dm7 | G7 N.C. | %
                option: from=2
                | r:1 | 3/7:4 |
                """);
        assertThat(text.given().home().orElseThrow()).hasToString("D dorian");
        assertThat(text.given().progression().orElseThrow().bars())
                .extracting(bar -> bar.stream()
                        .map(chord -> chord.map(ChordSymbol::name).orElse("-"))
                        .toList())
                .containsExactly(List.of("Dm7"), List.of("G7", "-"), List.of("G7", "-"));
        assertThat(text.given().formStart()).as("the first full bar").contains("1");
        assertThat(text.options()).isEqualTo(Map.of("from", "2"));
    }

    @Test
    void aFormMayStandForChords() {
        SoloText text = SoloText.parse("form: twelve-bar Bb\n3/7:4");
        assertThat(text.given().progression().orElseThrow())
                .isEqualTo(Progression.form("twelve-bar", PitchClass.parse("Bb")));
    }

    @Test
    void readsExpectations() {
        assertThat(SoloText.parse("3/7:4\n=> bar 1 beat 2½: full 4→5\n=> bar 2 beat 7/3: (unwritten)")
                        .expectations())
                .containsExactly(
                        new Expectation("1", Fraction.of(5, 2), Optional.of("full 4→5")),
                        new Expectation("2", Fraction.of(7, 3), Optional.empty()))
                .extracting(Expectation::toString)
                .containsExactly("=> bar 1 beat 2½: full 4→5", "=> bar 2 beat 2⅓: (unwritten)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "3/7",
                "3/7:0",
                "3/7:1/0",
                "3/7:x",
                "| 3/7:5 |",
                "| 3/7:4 | 3/7:3 |",
                "| 3/7:4 | | 3/7:4 |",
                "7/3:4",
                "3/7b0:4",
                "3/7c2:4",
                "hp3/7:4",
                "q3/7:4",
                "-:4",
                "r:2 -:2",
                "g3/5 -:4",
                "g3/5+2/5:4",
                "key: A\n3/7:4",
                "meter: 4\n3/7:4",
                "meter: 4/x\n3/7:4",
                "capo: x\n3/7:4",
                "home: A\nhome: D dorian\n3/7:4",
                "home: A nonsense\n3/7:4",
                "chords: H7\n3/7:4",
                "form: twelve-bar\n3/7:4",
                "form: five-bar A\n3/7:4",
                "option: from\n3/7:4",
                "3/7:4\n=> bar 1 beat x: full",
                "3/7:4\n=> bar 1: full"
            })
    void refusesAnythingElse(String text) {
        assertThatThrownBy(() -> SoloText.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .message()
                .isNotBlank();
    }
}
