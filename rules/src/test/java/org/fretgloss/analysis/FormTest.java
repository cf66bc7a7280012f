package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;

class FormTest {

    /** Two bars of lead-in, then A7 notes, D7 notes, A7 notes: only bar 3 puts every chord tone under its chord. */
    private static final SoloText LEAD_IN = SoloText.parse("""
            | 4/7:4 | 4/7:4 | 3/6:4 | 4/7:4 | 3/6:4 | 4/5:4 | 3/11:4 | 3/7:4 | 3/6:4 | 4/7:4 | 2/9:4 | 3/7:4 | 3/6:4 | 4/7:4 |
            """);

    private static Analysis analysed(Optional<String> start) {
        Progression form = Progression.form("twelve-bar", PitchClass.parse("A"));
        return Analysis.of(LEAD_IN.solo(), new Given(Optional.empty(), Optional.of(form), start));
    }

    @Test
    void beginsWhereMostChordTonesFall() {
        assertThat(analysed(Optional.empty()).form().orElseThrow().start().number())
                .isEqualTo("3");
    }

    @Test
    void aLeadInCountsBackwardsIntoTheChorusBefore() {
        Analysis analysis = analysed(Optional.empty());
        Note first = LEAD_IN.solo().notes().get(0);
        Note third = LEAD_IN.solo().notes().get(2);
        assertThat(analysis.placeOf(first)).isEqualTo("bar 1 (lead-in, bar 11, I) beat 1");
        assertThat(analysis.placeOf(third)).isEqualTo("bar 3 (chorus 1, bar 1, I) beat 1");
    }

    @Test
    void theUsersFirstBarWins() {
        assertThat(analysed(Optional.of("1")).form().orElseThrow().start().number())
                .isEqualTo("1");
    }

    @Test
    void aFirstBarThatIsNotThereIsRefusedWithThoseThereAre() {
        assertThatThrownBy(() -> analysed(Optional.of("99"))).hasMessageContaining("bars 1 to 14");
    }

    @Test
    void tiesGoToTheFirstFullBar() {
        SoloText pickUp = SoloText.parse("chords: A7\n| 4/7:1 | 4/7:4 | 4/7:4 |");
        Given given = new Given(Optional.empty(), pickUp.given().progression(), Optional.empty());
        Form form = Analysis.of(pickUp.solo(), given).form().orElseThrow();
        assertThat(form.start().number()).isEqualTo("1");
    }

    @Test
    void theChordsOfABarShareItEvenlyAndAPickUpHoldsTheEndOfItsBar() {
        SoloText text = SoloText.parse("chords: A7 D7\n| 4/7:1 | 4/7:4 |");
        Harmony harmony = Analysis.of(text.solo(), text.given()).harmony();
        assertThat(harmony.spans().stream()
                        .map(span -> span.start() + "-" + span.end() + " "
                                + span.chord().orElseThrow().name()))
                .containsExactly("0-1 D7", "1-3 A7", "3-5 D7");
    }
}
