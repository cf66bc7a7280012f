package org.fretgloss.solo;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.time.Fraction;

/** Notes that stand in order of onset: the stretches of them, and which are struck together. */
public final class NotesInTime {

    private NotesInTime() {}

    /**
     * The notes struck from one moment on and before another, found by halving: many stretches of a long solo cost little.
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

    /**
     * The notes in groups of those that are struck together; a grace note is struck alone.
     *
     * @param notes in order of onset
     */
    public static List<List<Note>> together(List<Note> notes) {
        List<List<Note>> groups = new ArrayList<>();
        for (Note note : notes) {
            if (groups.isEmpty()
                    || !isStruckWith(note, groups.get(groups.size() - 1).get(0))) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(note);
        }
        return groups;
    }

    private static boolean isStruckWith(Note note, Note other) {
        return !note.grace() && !other.grace() && note.onset().equals(other.onset());
    }
}
