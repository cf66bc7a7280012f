package org.fretgloss.annotator.read;

import java.util.Map;
import org.fretgloss.neck.Tuning;

/** What an instrument is tuned to where its score does not say (common practice, no source). */
final class StandardTunings {

    private static final Map<Integer, Tuning> BY_STRINGS = Map.of(
            4, Tuning.of("G2 D2 A1 E1"),
            5, Tuning.of("G2 D2 A1 E1 B0"),
            6, Tuning.STANDARD,
            7, Tuning.of("E4 B3 G3 D3 A2 E2 B1"),
            8, Tuning.of("E4 B3 G3 D3 A2 E2 B1 F♯1"));

    private StandardTunings() {}

    /** The tuning for a number of strings: basses with four or five, guitars with six to eight. */
    static Tuning of(int strings) {
        return BY_STRINGS.getOrDefault(strings, Tuning.STANDARD);
    }
}
