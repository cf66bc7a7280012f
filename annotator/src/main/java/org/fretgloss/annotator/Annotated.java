package org.fretgloss.annotator;

import java.util.List;
import java.util.Map;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.RuleFailure;

/**
 * A score with our lines in it, and what they are made from.
 *
 * @param source the score as it was given
 * @param text its text with our lines
 * @param analysis what the solo means
 * @param glosses what was found, in order, with the text that each finding shows
 * @param carriers ordinal of a note to the ordinal of the element that bears its lyric; a note that none may bear is
 *     absent
 * @param failures rules that failed; the findings of the others stand
 * @param notices what the user should know, a line each
 */
public record Annotated(
        ScoreFile source,
        String text,
        Analysis analysis,
        List<Gloss> glosses,
        Map<Integer, Integer> carriers,
        List<RuleFailure> failures,
        List<String> notices)
        implements Report {

    public Annotated {
        glosses = List.copyOf(glosses);
        carriers = Map.copyOf(carriers);
        failures = List.copyOf(failures);
        notices = List.copyOf(notices);
    }

    /** The file to write, in the container and encoding of the source. */
    public byte[] bytes() {
        return source.withText(text);
    }

    @Override
    public String score() {
        return source.name();
    }
}
