package org.fretgloss.checks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** Figures that a solo plays more than once: what is played twice alike is meant. */
final class Repeats {

    private final Solo solo;
    private final Map<List<Object>, Integer> counts;

    private Repeats(Solo solo, Map<List<Object>, Integer> counts) {
        this.solo = solo;
        this.counts = counts;
    }

    static Repeats of(Solo solo) {
        Map<List<Object>, Integer> counts = new HashMap<>();
        for (Note note : solo.notes()) {
            counts.merge(figure(solo, note), 1, Integer::sum);
        }
        return new Repeats(solo, counts);
    }

    /** Whether the note with both its neighbours stands elsewhere too, at the same places of the neck. */
    boolean isPlayedTwice(Note note) {
        return counts.getOrDefault(figure(solo, note), 0) > 1;
    }

    private static List<Object> figure(Solo solo, Note note) {
        return List.of(
                solo.before(note).map(Repeats::played),
                played(note),
                solo.after(note).map(Repeats::played));
    }

    private static Object played(Note note) {
        return note.at().<Object>map(at -> List.of(at, note.heardMidi())).orElseGet(note::heardMidi);
    }
}
