package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Picked chords against melodies; common practice, no source. */
class BrokenChordsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "| A3:1/2 C4 E4 C4 A4 E4 C4 E4 | F3:1/2 A3 C4 A3 F4 C4 A3 C4 |",
                "| E3:1/2 G3 B3 D4 E4 D4 B3 G3 | A3:1/2 C4 E4 G4 A4 G4 E4 C4 |",
                // two chords a bar
                "| C4:1/2 E4 G4 E4 F4 A4 C5 A4 | G4:1/2 B4 D5 B4 C4 E4 G4 E4 |",
                // a bar of one long note between them
                "| A3:1/2 C4 E4 C4 A4 E4 C4 E4 | A3:4 | F3:1/2 A3 C4 A3 F4 C4 A3 C4 |"
            })
    void arePickedChords(String text) {
        assertThat(isBroken(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "| r:4 | r:4 |",
                "| A3:4 | A3:4 |",
                // by step
                "| A4:1/2 B4 C5 B4 A4 G4 A4:1 | E4:1/2 F4 G4 F4 E4:2 |",
                // the pentatonic leaps too, but not all the time
                "| A4:1/2 C5 D5 C5 A4 G4 A4 C5 | D5:1/2 C5 A4 G4 E4 G4 A4:1 |",
                // a fanfare in one bar of three
                "| C4:1 E4 G4 C5 | B4:1/2 A4 G4 F4 E4:2 | D4:1/2 E4 F4 D4 C4:2 |",
                // a fifth is no chord
                "| A3:1/2 E4 A4 E4 A3 E4 A4 E4 | D4:1/2 A4 D5 A4 D4 A4 D5 A4 |"
            })
    void areNoMelody(String text) {
        assertThat(isBroken(text)).isFalse();
    }

    private static boolean isBroken(String text) {
        Solo solo = SoloText.parse(text).solo();
        List<Accompaniment.Sounding> line = solo.notes().stream()
                .map(note -> new Accompaniment.Sounding(note.midi(), note.onset(), note.end()))
                .toList();
        return BrokenChords.arePlayedBy(line, solo.bars());
    }
}
