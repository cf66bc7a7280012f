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
}
