package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.UnknownNameException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BluesFormTest {

    /** The bars as the sources that {@link BluesForm} names give them; the minor form is common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    twelve-bar       ; A  ; A7 | A7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | A7
                    quick-change     ; G  ; G7 | C7 | G7 | G7 | C7 | C7 | G7 | G7 | D7 | C7 | G7 | G7
                    eight-bar        ; E  ; E7 | B7 | A7 | A7 | E7 | B7 | E7 | B7
                    minor-twelve-bar ; C  ; Cm7 | Cm7 | Cm7 | Cm7 | Fm7 | Fm7 | Cm7 | Cm7 | A♭7 | G7 | Cm7 | Cm7
                    jazz-twelve-bar  ; B♭ ; B♭7 | E♭7 | B♭7 | B♭7 | E♭7 | E♭7 | B♭7 | G7 | Cm7 | F7 | B♭7 G7 | Cm7 F7
                    """)
    void laysOutTheBars(String name, String key, String bars) {
        Progression form = Progression.form(name, PitchClass.parse(key));
        assertThat(ProgressionTest.written(form)).isEqualTo(bars);
        assertThat(form.name()).isEqualTo(name);
        assertThat(form.key()).contains(PitchClass.parse(key));
    }

    @Test
    void chordsAreSpelledAgainstTheKey() {
        assertThat(ProgressionTest.written(Progression.form("eight-bar", PitchClass.parse("F♯"))))
                .startsWith("F♯7 | C♯7 | B7");
        assertThat(ProgressionTest.written(Progression.form("minor-twelve-bar", PitchClass.parse("Db"))))
                .endsWith("A7 | A♭7 | D♭m7 | D♭m7");
    }

    @Test
    void capitalsDoNotMatter() {
        assertThat(BluesForm.named(" Twelve-Bar ")).isEqualTo(BluesForm.TWELVE_BAR);
    }

    @Test
    void anUnknownNameTellsThoseThereAre() {
        assertThatThrownBy(() -> Progression.form("ten-bar", PitchClass.parse("A")))
                .isInstanceOfSatisfying(UnknownNameException.class, e -> {
                    assertThat(e.given()).isEqualTo("ten-bar");
                    assertThat(e.known())
                            .containsExactly(
                                    "twelve-bar", "quick-change", "eight-bar", "minor-twelve-bar", "jazz-twelve-bar");
                })
                .hasMessage("'ten-bar' is not the name of a form");
    }
}
