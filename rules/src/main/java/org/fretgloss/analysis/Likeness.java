package org.fretgloss.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * What two phrases have in common when one is laid over the other: moved in time and in pitch so that as many of their
 * notes as can be fall together. A repeat, a transposition and a shift in the bar then match whole, and an ornament only
 * adds notes that match nothing (the largest pattern under translation; Meredith, Lemström and Wiggins 2002).
 *
 * @param shared how many notes fall together
 * @param steps how far the later phrase lies above the earlier, in the steps that pitch was measured in
 * @param notes of both phrases together
 */
record Likeness(int shared, int steps, int notes) {

    /** A movement in time and pitch. */
    private record Shift(Fraction time, int steps) {}

    /**
     * Compares notes by time and pitch.
     *
     * @param earlier notes with a pitch
     * @param later likewise
     * @param pitch measures a note's pitch in steps of some kind
     */
    static Likeness of(List<Note> earlier, List<Note> later, ToIntFunction<Note> pitch) {
        Map<Shift, Integer> counts = new HashMap<>();
        Likeness best = new Likeness(0, 0, earlier.size() + later.size());
        for (Note from : earlier) {
            for (Note to : later) {
                int steps = pitch.applyAsInt(to) - pitch.applyAsInt(from);
                Shift shift = new Shift(to.onset().minus(from.onset()), steps);
                int shared = counts.merge(shift, 1, Integer::sum);
                if (shared > best.shared) {
                    best = new Likeness(shared, steps, best.notes);
                }
            }
        }
        return best;
    }

    /** Compares notes by time alone. */
    static Likeness ofRhythm(List<Note> earlier, List<Note> later) {
        return of(earlier, later, note -> 0);
    }

    /** The notes that fall together as a share of all, 0 to 1; 1 where every note of both does. */
    double share() {
        return notes == 0 ? 0 : 2.0 * shared / notes;
    }
}
