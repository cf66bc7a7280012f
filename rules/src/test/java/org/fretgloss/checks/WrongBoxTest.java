package org.fretgloss.checks;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;

class WrongBoxTest {

    private static final String LINE =
            "home: A minor pentatonic\n| 4/5:1/2 4/7 3/5 3/7 2/5 %s:1 2/5:1/2 | 3/7:1 3/5:1/2 4/7 4/5:1 4/7 |";

    private static SoloText with(String note) {
        return SoloText.parse(LINE.formatted(note));
    }

    /** The staff says G4, the tab A♭4: that one of them is wrong is told once, by the check that compares the two. */
    @Test
    void leavesToAnotherCheckWhatStaffAndTabDisagreeAbout() {
        assertThat(new WrongBox().examine(with("2/9").analysis(), Settings.defaults()))
                .hasSize(1);
        assertThat(new WrongBox().examine(with("2/9=G4").analysis(), Settings.defaults()))
                .isEmpty();
        assertThat(new PitchAgainstFret().examine(with("2/9=G4").analysis(), Settings.defaults()))
                .hasSize(1);
    }

    /** Two outside notes side by side are a line of their own, also where only the staff is written for one of them. */
    @Test
    void readsANeighbourWithoutStringAndFret() {
        SoloText solo = SoloText.parse(LINE.formatted("2/9").replace("2/5:1/2 |", "G♯4:1/2 |"));
        assertThat(solo.solo().notes()).anyMatch(note -> note.at().isEmpty());
        assertThat(new WrongBox().examine(solo.analysis().asWritten(), Settings.defaults()))
                .isEmpty();
    }

    /** C♯ belongs to A Mixolydian; that D7 has a C is a clash for the ear, and no slip of the fret. */
    @Test
    void leavesAScaleNoteAloneHoweverItClashes() {
        SoloText solo = SoloText.parse("home: A mixolydian\nchords: A7 | D7\n"
                + "| 4/7:1 3/6 2/5 3/7 | 2/5:1 3/6 1/5 3/7 | 4/7:1 3/6 2/5 3/7 | 2/7:1 3/6 1/5 3/7 |");
        assertThat(new WrongBox().examine(solo.analysis(), Settings.defaults())).isEmpty();
    }
}
