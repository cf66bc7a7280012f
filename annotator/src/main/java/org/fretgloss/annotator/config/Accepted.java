package org.fretgloss.annotator.config;

import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * A doubt that the teacher has looked at and let stand.
 *
 * @param rule the check's id
 * @param bar the bar's number as printed
 * @param beat an exact number, counted from 1 in the meter's own beats
 * @param at string and fret of the doubted note, where it has them
 * @param notes a digest of the notes around: when these change, the doubt is open again
 */
public record Accepted(String rule, String bar, String beat, Optional<StringFret> at, String notes) {

    /** The entry that lets a doubt stand. */
    public static Accepted of(Solo solo, Gloss doubt) {
        Note note = doubt.finding().note();
        return new Accepted(
                doubt.rule(), note.bar().number(), note.beat().toString(), note.at(), Surroundings.digest(solo, note));
    }

    /** Whether a solo has a note in the bar and on the beat. */
    boolean namesPlaceOf(Solo solo) {
        return solo.notes().stream()
                .anyMatch(note -> note.bar().number().equals(bar)
                        && note.beat().toString().equals(beat));
    }

    /** "wrong-box in bar 5 beat 7/2". */
    @Override
    public String toString() {
        return rule + " in bar " + bar + " beat " + beat;
    }
}
