package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.page.SoloText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the notes added to a home scale are spelled. */
class AddedNotesTest {

    private static String addedTo(String home, String notes) {
        SoloText example = SoloText.parse("home: " + home + "\n| " + notes + " |");
        StringBuilder added = new StringBuilder();
        for (AddedNote note : example.analysis().home().added()) {
            added.append(added.isEmpty() ? "" : ", ")
                    .append(note.degree())
                    .append(' ')
                    .append(note.pitch());
        }
        return added.toString();
    }

    @ParameterizedTest
    @CsvSource({
        "A minor pentatonic, D♭4:1 A3:3, 3 C♯",
        "A minor pentatonic, G♭4:1 A3:3, 6 F♯",
        "E major pentatonic, A♭3:1 E♭4:1 E3:2, 7 D♯"
    })
    void aNaturalDegreeIsSpelledByItsDegree(String home, String notes, String added) {
        assertThat(addedTo(home, notes)).isEqualTo(added);
    }

    @ParameterizedTest
    @CsvSource({
        "G major pentatonic, G♯3:1 A3:1 G3:2, ♭2 G♯",
        "G major pentatonic, A♭3:1 G3:3, ♭2 A♭",
        "B♭ major pentatonic, E4:1 F4:1 B♭3:2, ♭5 E",
        "A minor pentatonic, D♯4:1 E4:1 A3:2, ♭5 D♯"
    })
    void anAlteredDegreeIsSpelledAsItIsWritten(String home, String notes, String added) {
        assertThat(addedTo(home, notes)).isEqualTo(added);
    }

    @ParameterizedTest
    @CsvSource({
        "E♭4:1 D♯4:1 D♯5:2, ♭5 D♯", // most often, whatever the octave
        "E♭4:1 D♯4:1 A3:2, ♭5 E♭", // the first of as many
        "D♯4:1 E♭4:1 A3:2, ♭5 D♯"
    })
    void theSpellingMostOftenWrittenIsTaken(String notes, String added) {
        assertThat(addedTo("A minor pentatonic", notes)).isEqualTo(added);
    }

    @ParameterizedTest
    @CsvSource({
        "D4b1:1 A3:3, ♭5 E♭", // only a bend goes there: no spelling is written
        "D4b1:1 D4b1:1 D♯4:1 A3:1, ♭5 D♯", // the bent notes have no say
        "D♯4b1:1 D♯4b1:1 E♭4:1 A3:1, ♭5 E♭", // nor have those bent away from it
        "D♯4b1/2:1 A3:3, ♭5 D♯", // a curl stays where it is written
        "gD♯4 E4:1 xD♯4:1 D4b1:1 A3:1, ♭5 E♭" // grace notes and dead notes do not count
    })
    void onlyUnbentNotesTellTheSpelling(String notes, String added) {
        assertThat(addedTo("A minor pentatonic", notes)).isEqualTo(added);
    }

    @Test
    void theWholeAnalysisSpellsAnAddedNoteAsItIsListed() {
        SoloText example = SoloText.parse("home: G major pentatonic\n| G♯3:1 A3:1 G3:2 |");
        assertThat(example.analysis().home().spell(56)).hasToString("G♯3");
        assertThat(example.analysis().home().spell(68)).hasToString("G♯4");
        assertThat(example.analysis().home().spell(57)).hasToString("A3");
    }
}
