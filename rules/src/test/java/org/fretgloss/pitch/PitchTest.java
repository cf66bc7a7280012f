package org.fretgloss.pitch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {

    /**
     * MIDI 1.0 specification: note 60 is middle C, note 69 the A of 440 Hz, 21 and 108 the ends of a piano. Octaves are
     * numbered as in scientific pitch notation (middle C is C4; the number changes at C, whatever the accidental).
     */
    @ParameterizedTest
    @CsvSource({
        "C4, 60",
        "A4, 69",
        "A0, 21",
        "C8, 108",
        "C-1, 0",
        "G9, 127",
        "B3, 59",
        "B♯3, 60",
        "C♭4, 59",
        "F♯♯3, 55",
        "E♭♭5, 74"
    })
    void hasThePublishedMidiNumber(String pitch, int midi) {
        assertThat(Pitch.parse(pitch).midi()).isEqualTo(midi);
    }

    @ParameterizedTest
    @CsvSource({"61, D♭4", "66, F♯4", "69, A4", "70, B♭4"})
    void isSpelledAsUsualWhereNothingSaysHow(int midi, String pitch) {
        assertThat(Pitch.ofMidi(midi)).hasToString(pitch);
    }

    @ParameterizedTest
    @CsvSource({"60, B♯, B♯3", "59, C♭, C♭4", "61, C♯, C♯4", "0, C, C-1"})
    void keepsTheNameItIsGiven(int midi, String name, String pitch) {
        assertThat(Pitch.spelled(midi, PitchClass.parse(name))).hasToString(pitch);
    }

    @ParameterizedTest
    @CsvSource({"A#4, A♯4", "Bb3, B♭3", "Fx3, F♯♯3"})
    void readsAsciiSignsToo(String ascii, String pitch) {
        assertThat(Pitch.parse(ascii)).hasToString(pitch);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "4", "H4", "a4", "A♯♭4", "A4♯", "A 4", "A444"})
    void refusesAnythingElse(String text) {
        assertThatThrownBy(() -> Pitch.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"60, C♯", "61, C", "64, F"})
    void refusesANameThatDoesNotSoundThere(int midi, String name) {
        assertThatThrownBy(() -> Pitch.spelled(midi, PitchClass.parse(name)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(name);
    }
}
