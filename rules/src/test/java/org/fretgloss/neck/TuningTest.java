package org.fretgloss.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fretgloss.pitch.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuningTest {

    /** E2 A2 D3 G3 B3 E4 are the numbers 40 45 50 55 59 64 (scientific pitch notation; MIDI 1.0 specification). */
    @ParameterizedTest
    @CsvSource({"6, E2, 40", "5, A2, 45", "4, D3, 50", "3, G3, 55", "2, B3, 59", "1, E4, 64"})
    void standardTuningHasThePublishedPitches(int string, String pitch, int midi) {
        assertThat(Tuning.STANDARD.strings().get(string - 1)).hasToString(pitch);
        assertThat(Tuning.STANDARD.openMidi(string)).isEqualTo(midi);
    }

    /** Places that every guitarist knows: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"6, 5, A2", "5, 12, A3", "3, 6, D♭4", "3, 7, D4", "2, 5, E4", "2, 17, E5", "1, 0, E4"})
    void aFretRaisesAStringByASemitone(int string, int fret, String pitch) {
        assertThat(Tuning.STANDARD.midi(new StringFret(string, fret)))
                .isEqualTo(Pitch.parse(pitch).midi());
    }

    @Test
    void fretsAreCountedFromTheCapo() {
        Tuning capo = Tuning.STANDARD.withCapo(2);
        assertThat(capo.openMidi(6)).isEqualTo(Pitch.parse("F♯2").midi());
        assertThat(capo.midi(new StringFret(6, 3))).isEqualTo(Pitch.parse("A2").midi());
        assertThat(capo.strings()).as("the strings themselves stay").isEqualTo(Tuning.STANDARD.strings());
    }

    @Test
    void droppedDLowersTheLastStringOnly() {
        Tuning dropped = Tuning.of("E4 B3 G3 D3 A2 D2");
        assertThat(dropped.openMidi(6)).isEqualTo(Tuning.STANDARD.openMidi(6) - 2);
        assertThat(dropped.openMidi(5)).isEqualTo(Tuning.STANDARD.openMidi(5));
    }

    @Test
    void knowsItsStrings() {
        assertThat(Tuning.STANDARD.hasString(6)).isTrue();
        assertThat(Tuning.STANDARD.hasString(7)).isFalse();
        assertThat(Tuning.STANDARD.hasString(0)).isFalse();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new Tuning(List.of(), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tuning.STANDARD.withCapo(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tuning.of("E4 H3")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "drop D, E4 B3 G3 D3 A2 D2, 6",
        "drop D a semitone down, E♭4 B♭3 G♭3 D♭3 A♭2 D♭2, 6",
        "lowest string raised, E4 B3 G3 D3 A2 F2, 6",
        "bass in drop D, G2 D2 A1 D1, 4",
        "seven strings in drop A, E4 B3 G3 D3 A2 E2 A1, 7",
        "standard, E4 B3 G3 D3 A2 E2, 0",
        "bass, G2 D2 A1 E1, 0",
        "both outer strings lowered, D4 B3 G3 D3 A2 D2, 0",
        "open G, D4 B3 G3 D3 G2 D2, 0",
        "fifths, E5 A4 D4 G3, 0",
        "re-entrant, A4 E4 C4 G4, 0",
        "too few strings to tell, G4 D4 G3, 0"
    })
    void tellsWhereOnlyTheLastStringIsRetuned(String what, String strings, int retuned) {
        assertThat(Tuning.of(strings).retunedString().orElse(0)).as(what).isEqualTo(retuned);
    }
}
