package org.fretgloss.pitch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fretgloss.pitch.DegreeChange.Type.ADD;
import static org.fretgloss.pitch.DegreeChange.Type.ALTER;
import static org.fretgloss.pitch.DegreeChange.Type.SUBTRACT;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Degrees as W3C MusicXML 4.0 defines them: {@code degree}, {@code degree-alter}, {@code degree-type}. */
class ChordSymbolTest {

    private static final PitchClass A = PitchClass.parse("A");

    @Test
    void anAddedSeventhIsMinorBecauseItIsMeasuredFromADominantChord() {
        assertThat(onA(ChordKind.SUSPENDED_FOURTH, new DegreeChange(ADD, 7, 0))).isEqualTo("A7sus4: 1 4 5 ♭7");
        assertThat(onA(ChordKind.MAJOR, new DegreeChange(ADD, 7, 1))).isEqualTo("Amaj7: 1 3 5 7");
    }

    @Test
    void anyOtherAddedToneIsMajorOrPerfect() {
        assertThat(onA(ChordKind.MINOR, new DegreeChange(ADD, 6, 0))).isEqualTo("Am6: 1 ♭3 5 6");
        assertThat(onA(ChordKind.MINOR, new DegreeChange(ADD, 9, 0))).isEqualTo("Amadd9: 1 ♭3 5 9");
        assertThat(onA(ChordKind.DOMINANT, new DegreeChange(ADD, 9, 1))).isEqualTo("A7♯9: 1 3 5 ♭7 ♯9");
        assertThat(onA(ChordKind.MAJOR_SIXTH, new DegreeChange(ADD, 9, 0))).isEqualTo("A6/9: 1 3 5 6 9");
    }

    @Test
    void anAlteredToneIsMeasuredFromTheOneInTheKind() {
        assertThat(onA(ChordKind.AUGMENTED, new DegreeChange(ALTER, 5, -1))).isEqualTo("A: 1 3 5");
        assertThat(onA(ChordKind.MINOR_SEVENTH, new DegreeChange(ALTER, 5, -1))).isEqualTo("Am7♭5: 1 ♭3 ♭5 ♭7");
        assertThat(onA(ChordKind.MAJOR, new DegreeChange(ALTER, 5, -1))).isEqualTo("A(♭5): 1 3 ♭5");
    }

    @Test
    void anAlteredToneThatTheKindLacksIsAdded() {
        assertThat(onA(ChordKind.DOMINANT, new DegreeChange(ALTER, 9, -1))).isEqualTo("A7♭9: 1 3 5 ♭7 ♭9");
    }

    @Test
    void aToneCanBeTakenOut() {
        assertThat(onA(ChordKind.DOMINANT, new DegreeChange(SUBTRACT, 5, 0))).isEqualTo("A7no5: 1 3 ♭7");
        assertThat(onA(ChordKind.MAJOR, new DegreeChange(SUBTRACT, 7, 0))).isEqualTo("A: 1 3 5");
    }

    @Test
    void twoWaysToWriteAChordGiveTheSameChord() {
        ChordSymbol suspended = ChordSymbol.of(
                        A,
                        ChordKind.DOMINANT,
                        List.of(new DegreeChange(SUBTRACT, 3, 0), new DegreeChange(ADD, 4, 0)),
                        Optional.empty())
                .orElseThrow();
        assertThat(suspended).isEqualTo(ChordName.parse("A7sus4"));
    }

    @Test
    void theKindOtherIsItsRootAndWhatIsAdded() {
        assertThat(onA(ChordKind.OTHER, new DegreeChange(ADD, 3, -1), new DegreeChange(ADD, 5, 0)))
                .isEqualTo("Am: 1 ♭3 5");
    }

    @Test
    void aPedalWithTonesAboveItIsAChord() {
        assertThat(onA(ChordKind.PEDAL, new DegreeChange(ADD, 3, 0), new DegreeChange(ADD, 5, 0)))
                .isEqualTo("A: 1 3 5");
    }

    @Test
    void whereNoTwoNotesAreLeftThereIsNoChord() {
        assertThat(onA(ChordKind.PEDAL)).isEmpty();
        assertThat(onA(ChordKind.OTHER)).isEmpty();
        assertThat(onA(ChordKind.OTHER, new DegreeChange(ADD, 1, 0))).isEmpty();
        assertThat(onA(ChordKind.NONE, new DegreeChange(ADD, 3, 0), new DegreeChange(ADD, 5, 0)))
                .isEmpty();
        assertThat(onA(ChordKind.POWER, new DegreeChange(SUBTRACT, 5, 0))).isEmpty();
        assertThatThrownBy(() -> ChordSymbol.of(A, ChordKind.OTHER)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource
    void aPlainChordHasItsKindsTonesAndSuffix(ChordKind kind) {
        Optional<ChordSymbol> chord = ChordSymbol.of(A, kind, List.of(), Optional.empty());
        assertThat(chord.map(ChordSymbol::tones).orElse(List.of())).isEqualTo(kind.degrees());
        chord.ifPresent(symbol -> assertThat(symbol.name()).isEqualTo("A" + kind.suffix()));
    }

    @Test
    void theBassCountsAsATone() {
        ChordSymbol chord = ChordName.parse("G/A");
        assertThat(chord.degreeOf(A)).contains(new Degree(2, 0));
        assertThat(chord.contains(9)).isTrue();
        assertThat(ChordName.parse("G").contains(9)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"A7, 3", "Am7, ♭3", "A7♯9, 3", "Asus4, 4", "Asus2, 2", "A7sus4, 4", "A5, 5", "Adim7, ♭3", "A7no3, 5"})
    void theThirdOrWhatStandsForItTellsAChord(String name, String degree) {
        assertThat(ChordName.parse(name).definingTone()).hasToString(degree);
    }

    @ParameterizedTest
    @CsvSource({
        "A7, true",
        "A9, true",
        "A7♯9, true",
        "A13♭9, true",
        "Amaj7, false",
        "Am7, false",
        "A7sus4, false",
        "A5, false"
    })
    void aDominantHasAMajorThirdAndAMinorSeventh(String name, boolean dominant) {
        assertThat(ChordName.parse(name).isDominant()).isEqualTo(dominant);
    }

    /** Name and tones of a chord on A; "" where there is none. */
    private static String onA(ChordKind kind, DegreeChange... changes) {
        return ChordSymbol.of(A, kind, List.of(changes), Optional.empty())
                .map(chord -> chord.name() + ": "
                        + String.join(
                                " ",
                                chord.tones().stream().map(Degree::toString).toList()))
                .orElse("");
    }
}
