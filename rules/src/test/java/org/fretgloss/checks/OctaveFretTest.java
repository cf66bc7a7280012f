package org.fretgloss.checks;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Doubt;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;

class OctaveFretTest {

    /** Fret 3 sounds D4; the staff writes the octave below, which string 2 does not have. */
    @Test
    void suggestsNoFretOffTheNeck() {
        SoloText written = SoloText.parse("| 3/7:1/2 3/5 4/7 4/5 3/5 3/7 2/5 2/8 | 3/7:1 2/3=D3:1 2/5:2 |");

        assertThat(new OctaveFret().examine(written.analysis(), Settings.defaults()))
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.note().at()).hasToString("Optional[2/3]");
                    assertThat(found.doubt().flatMap(Doubt::suggestion)).isEmpty();
                    assertThat(found.text()).contains("?");
                });
    }

    /** A capo on fret 5 leaves 19 frets: fret 8 an octave up would be the twentieth. */
    @Test
    void suggestsNoFretThatACapoTakesAway() {
        SoloText written = SoloText.parse("capo: 5\n| 3/7:1/2 3/5 4/7 4/5 3/5 3/7 2/5 2/8 | 3/7:1 2/8=C6:1 2/5:2 |");

        assertThat(new OctaveFret().examine(written.analysis(), Settings.defaults()))
                .singleElement()
                .satisfies(found ->
                        assertThat(found.doubt().flatMap(Doubt::suggestion)).isEmpty());
    }
}
