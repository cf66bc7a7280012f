package org.fretgloss.fingering;

import java.util.Map;
import java.util.OptionalDouble;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * A solo whose notes have strings and frets, as far as they can be played at all.
 *
 * @param written the solo as the score has it
 * @param solo the same with the missing places filled in; a note that no string reaches stays without
 * @param inferred how sure each inferred place is, above 0 to 1, by the note's ordinal in the document
 */
public record Fingering(Solo written, Solo solo, Map<Integer, Double> inferred) {

    public Fingering {
        inferred = Map.copyOf(inferred);
    }

    /** Nothing is missing, or nothing is to be filled in. */
    public static Fingering asWritten(Solo solo) {
        return new Fingering(solo, solo, Map.of());
    }

    /** Whether a note's place is inferred, not read. */
    public boolean isInferred(Note note) {
        return inferred.containsKey(note.ordinal());
    }

    /** How sure an inferred place is; nothing for a place that the score tells, or where there is none. */
    public OptionalDouble sureness(Note note) {
        Double sure = inferred.get(note.ordinal());
        return sure == null ? OptionalDouble.empty() : OptionalDouble.of(sure);
    }
}
