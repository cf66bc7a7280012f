package org.fretgloss.neck;

import java.util.List;
import java.util.stream.IntStream;

/** Where on the neck a pitch can be played. */
public final class Neck {

    /** Frets of an electric guitar's neck; few have more (common practice, no source). */
    public static final int FRETS = 24;

    private Neck() {}

    /** Whether a place, its fret counted from the capo, is neither before the capo nor beyond the neck. */
    public static boolean holds(StringFret at, Tuning tuning) {
        return at.fret() >= 0 && at.fret() <= FRETS - tuning.capo();
    }

    /** All places of a pitch, string 1 first; none where it lies below the lowest string or beyond the last fret. */
    public static List<StringFret> placesOf(int midi, Tuning tuning) {
        return IntStream.rangeClosed(1, tuning.size())
                .mapToObj(string -> new StringFret(string, midi - tuning.openMidi(string)))
                .filter(at -> holds(at, tuning))
                .toList();
    }
}
