package org.fretgloss.solo;

import java.util.List;
import org.fretgloss.time.Fraction;

/** Cuts stretches out of notes that stand in order of onset, by halving: many stretches of a long solo cost little. */
public final class NotesInTime {

    private NotesInTime() {}

    /**
     * The notes struck from one moment on and before another.
     *
     * @param notes in order of onset
     * @param start quarter notes from the start of the part
     * @param end likewise, not before the start
     */
    public static List<Note> between(List<Note> notes, Fraction start, Fraction end) {
        return notes.subList(firstFrom(start, notes), firstFrom(end, notes));
    }

    private static int firstFrom(Fraction moment, List<Note> notes) {
        int low = 0;
        int high = notes.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (notes.get(middle).onset().isLessThan(moment)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
