package org.fretgloss.pitch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source. */
class NumeralTest {

    @ParameterizedTest
    @CsvSource({
        "A, A7, I",
        "A, D7, IV",
        "A, E9, V",
        "A, Bm7, ii",
        "A, F♯7, VI",
        "A, F♯m7, vi",
        "A, F7, ♭VI",
        "A, G, ♭VII",
        "A, Am7, i",
        "A, Dm7, iv",
        "A, D♯7, ♭V",
        "A, D♯dim7, ♯iv",
        "A, E♭dim7, ♭v",
        "A, G♯m7♭5, vii",
        "B♭, E♭7, IV",
        "B♭, G♭7, ♭VI",
        "F♯, C♯7, V",
        "C, E5, III"
    })
    void namesRootAndThird(String tonic, String chord, String numeral) {
        assertThat(Numeral.of(ChordName.parse(chord), PitchClass.parse(tonic))).isEqualTo(numeral);
    }
}
