package org.fretgloss.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How meters are counted: common practice, no source. */
class MeterTest {

    @ParameterizedTest(name = "{0}/{1}: {2} beats of {3} quarters")
    @CsvSource({
        "4, 4, 4, 1",
        "3, 4, 3, 1",
        "2, 2, 2, 2",
        "12, 8, 4, 3/2",
        "9, 8, 3, 3/2",
        "6, 8, 2, 3/2",
        "6, 16, 2, 3/4",
        "3, 8, 3, 1/2",
        "5, 8, 5, 1/2",
        "7, 8, 7, 1/2",
        "6, 4, 6, 1",
        "1, 4, 1, 1"
    })
    void countsItsOwnBeats(int count, int unit, int beats, String length) {
        Meter meter = new Meter(count, unit);
        assertThat(meter.beats()).isEqualTo(beats);
        assertThat(meter.beatLength()).hasToString(length);
        assertThat(meter.beatLength().times(beats)).as("the beats fill the bar").isEqualTo(meter.barLength());
    }

    @ParameterizedTest
    @CsvSource({"4, 4, 4", "12, 8, 6", "6, 8, 3", "5, 8, 5/2", "3, 8, 3/2", "7, 16, 7/4"})
    void aBarLastsAsManyQuarters(int count, int unit, String quarters) {
        assertThat(new Meter(count, unit).barLength()).hasToString(quarters);
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "4, 0", "-3, 4"})
    void refusesNumbersBelowOne(int count, int unit) {
        assertThatThrownBy(() -> new Meter(count, unit)).isInstanceOf(IllegalArgumentException.class);
    }
}
