package org.fretgloss.checks;

import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;

/** Where on the neck a pitch can be played. */
final class Neck {

    /** Frets of an electric guitar's neck; few have more (common practice, no source). */
    static final int FRETS = 24;

    private Neck() {}

    static boolean holds(StringFret at) {
        return at.fret() >= 0 && at.fret() <= FRETS;
    }

    /** All places of a pitch, string 1 first. */
    static List<StringFret> placesOf(int midi, Tuning tuning) {
        return IntStream.rangeClosed(1, tuning.size())
                .mapToObj(string -> new StringFret(string, midi - tuning.openMidi(string)))
                .filter(Neck::holds)
                .toList();
    }
}
