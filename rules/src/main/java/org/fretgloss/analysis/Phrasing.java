package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Where phrases begin: a phrase runs from one silence of a beat or more to the next.
 *
 * @param starts indexes of the notes that open a phrase, rising
 */
public record Phrasing(List<Integer> starts) {

    public Phrasing {
        starts = List.copyOf(starts);
    }

    static Phrasing of(Solo solo, List<Silence> silences) {
        List<Integer> starts = new ArrayList<>();
        if (!solo.notes().isEmpty()) {
            starts.add(0);
        }
        silences.stream()
                .filter(silence -> !silence.beats().isLessThan(Fraction.ONE))
                .forEach(silence -> starts.add(silence.after().index()));
        return new Phrasing(starts);
    }

    /** Whether the note opens a phrase. */
    public boolean startsAt(Note note) {
        return Collections.binarySearch(starts, note.index()) >= 0;
    }

    /** Which phrase a note belongs to, counted from 0. */
    public int phraseOf(Note note) {
        int place = Collections.binarySearch(starts, note.index());
        return place >= 0 ? place : -place - 2;
    }

    /** The last note of each phrase, dead and grace notes included, in order. */
    List<Note> ends(Solo solo) {
        List<Note> ends = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int next = i + 1 < starts.size() ? starts.get(i + 1) : solo.notes().size();
            ends.add(solo.notes().get(next - 1));
        }
        return ends;
    }
}
