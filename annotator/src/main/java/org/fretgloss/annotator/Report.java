package org.fretgloss.annotator;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.RuleFailure;
import org.fretgloss.solo.Note;

/** What was found in one score, whether it was written into it or only reported. */
public sealed interface Report permits Annotated, Checked {

    /** The score as it was named. */
    String score();

    /** What the solo means. */
    Analysis analysis();

    /** What was found, in order. */
    List<Gloss> glosses();

    /** Ordinal of a note to the ordinal of the element that bears its lyric; a note that none may bear is absent. */
    Map<Integer, Integer> carriers();

    /** Rules that failed; the findings of the others stand. */
    List<RuleFailure> failures();

    /** What the user should know, a line each. */
    List<String> notices();

    /** The element that bears a note's lyric. */
    default Optional<Integer> carrierOf(Note note) {
        return Optional.ofNullable(carriers().get(note.ordinal()));
    }
}
