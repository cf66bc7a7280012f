package org.fretgloss.fingering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every player of these instruments does, common practice, no source; fingers leave a hand's width to others. */
class InstrumentsTest {

    private static final String SEVEN_STRINGS = "tuning: E4 B3 G3 D3 A2 E2 B1\n";
    private static final String BASS = "tuning: G2 D2 A1 E1\n";
    private static final String TWELVE_STRINGS = "tuning: E4 E4 B3 B3 G4 G3 D4 D3 A3 A2 E3 E2\n";

    /** Frets that a hand covers with a stretch. */
    private static final int HAND = 4;

    @Test
    void belowTheSixthStringOnlyTheSeventhIsLeft() {
        List<StringFret> places = places(SEVEN_STRINGS + "| B1:1/2 C♯2 D2 D♯2 B1 D2 B1 D2 |");
        assertThat(places).extracting(StringFret::string).containsOnly(7);
        assertThat(places).extracting(StringFret::fret).containsExactly(0, 2, 3, 4, 0, 3, 0, 3);
    }

    @Test
    void aBassLineStaysUnderTheHand() {
        assertThat(spread(places(BASS + "| F1:1/2 A1 B♭1 C2 D2 E♭2 F2 F1 |"))).isLessThanOrEqualTo(HAND);
    }

    @Test
    void twoOfOnePitchTakeTwoStringsOfACourse() {
        List<StringFret> places = places(TWELVE_STRINGS + "| E4+E4:2 F4+F4 |");
        assertThat(places.subList(0, 2)).extracting(StringFret::string).doesNotHaveDuplicates();
        assertThat(places.subList(2, 4)).extracting(StringFret::string).doesNotHaveDuplicates();
    }

    @Test
    void aWholeChordOfTwelveStringsFindsAStringForEachNote() {
        List<StringFret> places = places(TWELVE_STRINGS + "| E2+E3+B2+B3+E3+E4+G♯3+G♯4+B3+B3+E4+E4:4 |");
        assertThat(places).hasSize(12);
        assertThat(places).extracting(StringFret::string).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 7})
    void underACapoTheOpenChordIsTakenAsWithout(int capo) {
        List<Integer> chord = List.of(48, 52, 55, 60, 64);
        String notes = chord.stream()
                .map(midi -> Pitch.ofMidi(midi + capo).toString())
                .reduce((a, b) -> a + "+" + b)
                .orElseThrow();
        assertThat(places("capo: " + capo + "\n| " + notes + ":4 |"))
                .containsExactly(
                        new StringFret(5, 3),
                        new StringFret(4, 2),
                        new StringFret(3, 0),
                        new StringFret(2, 1),
                        new StringFret(1, 0));
    }

    @Test
    void thirdsAndFourthsLieOnNeighbouringStrings() {
        List<StringFret> places = places("| E4+G4:1 F4+A4 G4+B4 A4+C5 | D4+F♯4 D4+G4 E4+A4 G4+C5 |");
        for (int i = 0; i < places.size(); i += 2) {
            assertThat(places.get(i).string() - places.get(i + 1).string())
                    .as("%s", places)
                    .isEqualTo(1);
            assertThat(spread(places.subList(i, i + 2))).isLessThanOrEqualTo(2);
        }
    }

    @Test
    void aSlideStaysOnItsString() {
        List<Note> notes = notes("| A3:1/2 sB3 C4 sD4 E4 sD4 C4 sA3 |");
        assertThat(IntStream.range(0, 4))
                .allSatisfy(i -> assertThat(notes.get(2 * i + 1).sharesStringWith(notes.get(2 * i)))
                        .isTrue());
    }

    /** A4 lies at 1/5, 2/10 and 3/14; where it was played, the hand was. */
    @ParameterizedTest
    @ValueSource(strings = {"1/5", "2/10", "3/14"})
    void onePlaceThatTheScoreTellsDrawsItsNeighbours(String known) {
        List<StringFret> places = places("| C5:1/2 A4 G4 A4 " + known + " A4 C5 A4 |");
        int fret = Integer.parseInt(known.substring(2));
        assertThat(places).element(4).hasToString(known);
        assertThat(places)
                .allSatisfy(at -> assertThat(Math.abs(at.fret() - fret)).isLessThanOrEqualTo(HAND));
    }

    private static int spread(List<StringFret> places) {
        int[] frets = places.stream()
                .mapToInt(StringFret::fret)
                .filter(fret -> fret > 0)
                .sorted()
                .toArray();
        return frets.length == 0 ? 0 : frets[frets.length - 1] - frets[0];
    }

    private static List<Note> notes(String music) {
        return HandFinder.find(SoloText.parse(music).solo(), Comfort.NEUTRAL)
                .solo()
                .notes();
    }

    private static List<StringFret> places(String music) {
        return notes(music).stream().map(note -> note.at().orElseThrow()).toList();
    }
}
