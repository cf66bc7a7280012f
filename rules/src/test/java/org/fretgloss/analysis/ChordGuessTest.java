package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.fretgloss.pitch.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Voicings as rhythm guitarists and pianists play them; each note of a name counts as one that sounds as long. */
class ChordGuessTest {

    private static ChordGuess guess(String voicing) {
        List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
        int lowest = Integer.MAX_VALUE;
        for (String name : voicing.split(" ", -1)) {
            int midi = Pitch.parse(name).midi();
            durations.set(midi % 12, durations.get(midi % 12) + 1);
            lowest = Math.min(lowest, midi);
        }
        return ChordGuess.of(durations, OptionalInt.of(lowest % 12)).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "A2 E3 A3 C♯4 E4, A",
        "A2 E3 A3 C4 E4, Am",
        "A2 E3 G3 C♯4 E4, A7",
        "A2 G3 C♯4, A7",
        "D3 A3 C4 F♯4, D7",
        "D3 A3 C4 F4, Dm7",
        "C3 E3 G3 B3, Cmaj7",
        "C3 E3 G3 A3, C6",
        "A2 C3 E3 G3, Am7",
        "B2 D3 F3 A3, Bm7♭5",
        "D3 A3 D4 G4, Dsus4",
        "G2 B2 F3 A3 D4, G9",
        "E2 G♯3 D4, E7",
        "E3 G3 C4 E4, C",
        "B2 D♯3 F♯3, B",
    })
    void namesAVoicing(String voicing, String chord) {
        assertThat(guess(voicing).chord()).hasToString(chord);
        assertThat(guess(voicing).confidence()).isBetween(0.5, 1.0);
    }

    @Test
    void everyTriadAndSeventhOnEveryRoot() {
        for (int root = 0; root < 12; root++) {
            for (List<Integer> tones :
                    List.of(List.of(0, 4, 7), List.of(0, 3, 7), List.of(0, 4, 7, 10), List.of(0, 3, 7, 10))) {
                List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
                for (int tone : tones) {
                    durations.set((root + tone) % 12, 2.0);
                }
                ChordGuess guess =
                        ChordGuess.of(durations, OptionalInt.of(root)).orElseThrow();
                assertThat(guess.chord().root().chroma()).isEqualTo(root);
                assertThat(guess.chord().tones())
                        .extracting(degree -> degree.chroma())
                        .containsExactlyElementsOf(tones);
            }
        }
    }

    @Test
    void aShortPassingNoteChangesNothing() {
        List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
        List.of(9, 1, 4).forEach(chroma -> durations.set(chroma, 4.0));
        durations.set(11, 0.5);
        assertThat(ChordGuess.of(durations, OptionalInt.of(9)).orElseThrow().chord())
                .hasToString("A");
    }

    @Test
    void isLessSureOfACluster() {
        assertThat(guess("C3 C♯3 D3 E♭3 E3").confidence())
                .isLessThan(guess("C3 E3 G3").confidence() / 2);
    }

    @Test
    void aFifthOrALoneLineNamesNoChord() {
        List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
        assertThat(ChordGuess.of(durations, OptionalInt.empty())).isEmpty();
        durations.set(9, 4.0);
        durations.set(4, 4.0);
        assertThat(ChordGuess.of(durations, OptionalInt.of(9))).isEmpty();
    }
}
