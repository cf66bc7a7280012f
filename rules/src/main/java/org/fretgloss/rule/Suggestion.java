package org.fretgloss.rule;

import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;

/**
 * What was probably meant where a rule doubts a note; a finding holds the likeliest.
 *
 * @param at where it would be fretted
 * @param pitch what it would sound, or how it would be spelled
 */
public record Suggestion(Optional<StringFret> at, Optional<Pitch> pitch) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if it suggests nothing
     */
    public Suggestion {
        if (at.isEmpty() && pitch.isEmpty()) {
            throw new IllegalArgumentException("a suggestion says a place or a pitch");
        }
    }

    /** Another place, with the pitch it gives. */
    public static Suggestion of(StringFret at, Pitch pitch) {
        return new Suggestion(Optional.of(at), Optional.of(pitch));
    }

    /** Another pitch or spelling at the same place. */
    public static Suggestion of(Pitch pitch) {
        return new Suggestion(Optional.empty(), Optional.of(pitch));
    }
}
