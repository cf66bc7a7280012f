package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.pitch.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

    /** From the major tonic of the signature: the scale, ♭3 ♭7 ♯1 ♯4 ♯5 (common practice, no source). */
    @ParameterizedTest(name = "with {0} sharps")
    @CsvSource({
        "0, C C♯ D E♭ E F F♯ G G♯ A B♭ B",
        "4, B♯ C♯ D D♯ E E♯ F♯ G G♯ A A♯ B",
        "-3, C D♭ D E♭ E F G♭ G A♭ A B♭ B"
    })
    void namesNotesByTheKey(int fifths, String names) {
        String[] expected = names.split(" ", -1);
        for (int chroma = 0; chroma < 12; chroma++) {
            assertThat(Spelling.inKey(60 + chroma, fifths).name()).hasToString(expected[chroma]);
        }
    }

    @Test
    void alwaysSoundsAsAsked() {
        for (int fifths = -14; fifths <= 14; fifths++) {
            for (int midi = 20; midi < 100; midi++) {
                assertThat(Spelling.inKey(midi, fifths).midi()).isEqualTo(midi);
                for (int offset = -24; offset <= 24; offset++) {
                    assertThat(Spelling.of(midi, Pitch.parse("F♯4"), offset, fifths)
                                    .midi())
                            .isEqualTo(midi);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} written {1} semitones high is {2}")
    @CsvSource({"F♯5, 12, F♯4", "G♭5, 12, G♭4", "A4, -2, B4", "C♯5, -2, D♯5", "D♭5, 10, E♭4", "B♯3, 0, B♯3"})
    void keepsTheWrittenSpelling(String written, int offset, String sounding) {
        Pitch pitch = Pitch.parse(written);
        assertThat(Spelling.of(pitch.midi() - offset, pitch, offset, 0)).hasToString(sounding);
    }

    @Test
    void leavesASpellingThatDoesNotSoundSo() {
        assertThat(Spelling.of(68, Pitch.parse("A4"), 0, -4)).hasToString("A♭4");
    }
}
