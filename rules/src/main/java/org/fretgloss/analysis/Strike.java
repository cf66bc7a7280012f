package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.NotesInTime;
import org.fretgloss.solo.Technique;

/**
 * Notes struck together; the hand cannot move between them. A grace note is struck alone.
 *
 * @param notes at least one, in sounding order
 * @param opensPhrase whether a phrase begins here
 * @param onSlide whether a slide leads here: to one of the notes, or away from the notes before
 */
record Strike(List<Note> notes, boolean opensPhrase, boolean onSlide) {

    Strike {
        notes = List.copyOf(notes);
    }

    /** The strikes of some notes in sounding order. */
    static List<Strike> of(List<Note> notes, Phrasing phrasing) {
        List<Strike> strikes = new ArrayList<>();
        List<Note> before = List.of();
        for (List<Note> together : NotesInTime.together(notes)) {
            strikes.add(
                    new Strike(together, together.stream().anyMatch(phrasing::startsAt), isSlide(before, together)));
            before = together;
        }
        return strikes;
    }

    private static boolean isSlide(List<Note> before, List<Note> notes) {
        return before.stream().anyMatch(note -> note.has(Technique.SLIDE_OUT))
                || notes.stream().anyMatch(note -> note.attack() == Attack.SLID || note.has(Technique.SLIDE_IN));
    }

    Note first() {
        return notes.get(0);
    }

    Note last() {
        return notes.get(notes.size() - 1);
    }
}
