package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import org.fretgloss.page.SoloText;
import org.junit.jupiter.api.Test;

class BuildTest {

    private static final String CALM = "| 3/7:4 ";
    private static final String BUSY = "| 3/7:1 3/7 3/7 3/7 ";
    private static final String HIGH = "| 1/12:4 ";
    private static final String BENT = "| 3/7b2:4 ";
    private static final String EMPTY = "| r:4 ";

    private static Optional<Climax> climax(String... bars) {
        return Build.climax(SoloText.parse(String.join("", bars) + "|").solo());
    }

    private static String where(String... bars) {
        return climax(bars)
                .map(climax -> climax.bar().number() + "+" + climax.bars())
                .orElse("none");
    }

    /** How far the largest of some values stands above their mean. */
    private static double standing(double... values) {
        double mean = Arrays.stream(values).sum() / values.length;
        double variance =
                Arrays.stream(values).map(value -> Math.pow(value - mean, 2)).sum() / values.length;
        return (Arrays.stream(values).max().orElseThrow() - mean) / Math.sqrt(variance);
    }

    @Test
    void standsWhereMostHappens() {
        Climax climax = climax(CALM, CALM, CALM, CALM, BUSY, BUSY, CALM, CALM).orElseThrow();
        assertThat(climax.bar().number()).isEqualTo("5");
        assertThat(climax.bars()).isEqualTo(2);
        assertThat(climax.first().index()).isEqualTo(4);
        assertThat(climax.last().index()).isEqualTo(11);
        double[] notesPerBeatOfEveryWindow = {
            2 / 8.0, 2 / 8.0, 2 / 8.0, 5 / 8.0, 8 / 8.0, 5 / 8.0, 2 / 8.0, 3 / 12.0, 3 / 12.0, 6 / 12.0, 9 / 12.0,
            9 / 12.0, 6 / 12.0, 4 / 16.0, 7 / 16.0, 10 / 16.0, 10 / 16.0, 10 / 16.0
        };
        assertThat(climax.density()).isCloseTo(standing(notesPerBeatOfEveryWindow), within(1e-9));
        assertThat(climax.register()).as("all on one pitch").isZero();
        assertThat(climax.bend()).as("nothing is bent").isZero();
    }

    @Test
    void registerCountsByHeardPitch() {
        assertThat(where(CALM, HIGH, HIGH, CALM, CALM, CALM, CALM, CALM)).isEqualTo("2+2");
        assertThat(climax(CALM, BENT, BENT, CALM, CALM, CALM, CALM, CALM)
                        .orElseThrow()
                        .register())
                .isPositive();
    }

    @Test
    void bendsCountByTheirWidth() {
        assertThat(climax(CALM, CALM, CALM, BENT, BENT, CALM, CALM, CALM).orElseThrow())
                .satisfies(climax -> {
                    assertThat(climax.bar().number()).isEqualTo("4");
                    assertThat(climax.bend()).isPositive();
                    assertThat(climax.density()).isZero();
                });
    }

    @Test
    void ofTwoEqualWindowsTheEarlierWins() {
        assertThat(where(CALM, BUSY, BUSY, CALM, CALM, CALM, BUSY, BUSY, CALM)).isEqualTo("2+2");
    }

    @Test
    void ofTwoEqualWindowsTheShorterWins() {
        assertThat(where(CALM, BUSY, BUSY, BUSY, BUSY, CALM, CALM, CALM)).isEqualTo("2+2");
    }

    @Test
    void aShortSoloHasNone() {
        assertThat(where(CALM, CALM, CALM, BUSY, BUSY, CALM, CALM)).isEqualTo("none");
        assertThat(where("| 3/7:1 ", CALM, CALM, CALM, BUSY, BUSY, CALM, CALM))
                .as("a pick-up is no bar of the eight")
                .isEqualTo("none");
        assertThat(where(EMPTY, EMPTY, CALM, CALM, CALM, BUSY, BUSY, CALM, EMPTY, EMPTY))
                .as("nor are the rests around a solo")
                .isEqualTo("none");
    }

    @Test
    void whereNothingStandsOutThereIsNone() {
        assertThat(where(CALM, CALM, CALM, CALM, CALM, CALM, CALM, CALM)).isEqualTo("none");
    }

    @Test
    void barsOfRestCannotWin() {
        assertThat(where(CALM, EMPTY, EMPTY, EMPTY, EMPTY, BUSY, BUSY, CALM)).isEqualTo("6+2");
    }

    @Test
    void deadNotesAreStruckAndGraceNotesAreNot() {
        String dead = "| x3/7:1 x3/7 x3/7 x3/7 ";
        assertThat(where(CALM, CALM, CALM, "| 3/7:1 x3/7 3/7 x3/7 ", dead, CALM, CALM, CALM))
                .isEqualTo("4+2");
        assertThat(where(CALM, CALM, CALM, "| g3/9 g3/9 g3/9 3/7:4 ", CALM, CALM, CALM, CALM))
                .isEqualTo("none");
    }

    @Test
    void beatsAreTheMetersOwn() {
        String slow = "| (12/8) 3/7:6 ";
        String fast = "| (4/4) 3/7:1 3/7 3/7 3/7 ";
        assertThat(where(slow, slow, slow, slow, fast, fast, slow, slow)).isEqualTo("5+2");
    }
}
