package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * The notes played from one box.
 *
 * @param box the box in force
 * @param first the note it begins on
 * @param last the last note before the next box
 * @param lead how much dearer the whole way would be, in frets of reach, if all these notes were played from the next
 *     best box; 0 where another does as well
 */
public record BoxSpan(Box box, Note first, Note last, long lead) {

    /** Its notes, in sounding order. */
    public List<Note> notes(Solo solo) {
        return solo.notes().subList(first.index(), last.index() + 1);
    }

    /** How sure the places of its notes are, 0 to 1, on average. */
    public double sureness(Analysis analysis) {
        return notes(analysis.solo()).stream()
                .mapToDouble(analysis::surenessOf)
                .average()
                .orElse(1);
    }

    /** The share of its fretted notes that lie in the box's window, 0 to 1; open strings say nothing. */
    public double shareInside(Solo solo) {
        List<StringFret> fretted = notes(solo).stream()
                .flatMap(note -> note.at().stream())
                .filter(at -> !at.isOpen())
                .toList();
        long inside = fretted.stream().filter(box::windowHolds).count();
        return fretted.isEmpty() ? 1 : (double) inside / fretted.size();
    }
}
