package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.solo.Note;

/**
 * Notes that belong together as the words of a sentence do.
 *
 * @param notes at least one, in sounding order; dead and grace notes included
 * @param afterBreath whether it follows a silence of a beat or more, or nothing at all
 */
public record Phrase(List<Note> notes, boolean afterBreath) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there is no note
     */
    public Phrase {
        notes = List.copyOf(notes);
        if (notes.isEmpty()) {
            throw new IllegalArgumentException("a phrase has notes");
        }
    }

    /** The note it begins with: a grace note where one leans on its first main note. */
    public Note first() {
        return notes.get(0);
    }

    /**
     * The note it comes to rest on: the last that has a pitch and takes time, the highest string of several. None where
     * all are dead or grace notes.
     */
    public Optional<Note> landing() {
        return notes.stream().filter(Note::isPitched).reduce((earlier, later) -> later);
    }
}
