package org.fretgloss.annotator.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestTest {

    private static final List<String> NAMES =
            List.of("box", "moves", "outline", "notes", "bend", "wrong-box", "octave-fret", "off-neck", "Lead Guitar");

    @ParameterizedTest
    @CsvSource({
        "boxx, box",
        "bxo, ",
        "BOX, box",
        "bnd, bend",
        "move, moves",
        "note, notes",
        "otuline, outline",
        "octav, octave-fret",
        "offneck, off-neck",
        "wrong box, wrong-box",
        "led guitar, Lead Guitar",
        "guitar, Lead Guitar"
    })
    void suggestsOnlyWhatIsNear(String given, String meant) {
        assertThat(Nearest.of(given, NAMES).orElse(null)).isEqualTo(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"foo", "", " ", "x", "tabs", "dynamics", "fretboard"})
    void listsTheNamesWhereNoneIsNear(String given) {
        assertThat(Nearest.hint(given, NAMES))
                .isEqualTo(
                        "there are: box, moves, outline, notes, bend, wrong-box, octave-fret, off-neck, Lead Guitar");
    }

    /** "box" is a part of two names, but it is one of them; "o" would be a part of nearly all. */
    @Test
    void takesAPartOnlyWhereOneNameHoldsIt() {
        assertThat(Nearest.of("eck", NAMES)).contains("off-neck");
        assertThat(Nearest.of("o", NAMES)).isEmpty();
        assertThat(Nearest.of("e-fr", NAMES)).contains("octave-fret");
    }
}
