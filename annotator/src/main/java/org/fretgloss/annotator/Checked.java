package org.fretgloss.annotator;

import java.util.List;
import java.util.Map;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.annotator.config.Accepted;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.RuleFailure;
import org.fretgloss.rule.Severity;

/**
 * What proof-reading made of a score.
 *
 * @param score the score as it was named
 * @param analysis what the solo means
 * @param glosses the doubts that are open, in order of onset
 * @param accepted the doubts that the teacher lets stand
 * @param stale the teacher's entries that fit no doubt any more
 * @param carriers ordinal of a note to the ordinal of the element that would bear its lyric
 * @param failures checks that failed; the doubts of the others stand
 * @param notices what the user should know, a line each
 */
public record Checked(
        String score,
        Analysis analysis,
        List<Gloss> glosses,
        List<Gloss> accepted,
        List<Accepted> stale,
        Map<Integer, Integer> carriers,
        List<RuleFailure> failures,
        List<String> notices)
        implements Report {

    public Checked {
        glosses = List.copyOf(glosses);
        accepted = List.copyOf(accepted);
        stale = List.copyOf(stale);
        carriers = Map.copyOf(carriers);
        failures = List.copyOf(failures);
        notices = List.copyOf(notices);
    }

    /** The same without open doubts that weigh less. */
    public Checked from(Severity least) {
        return new Checked(
                score,
                analysis,
                glosses.stream()
                        .filter(gloss -> gloss.finding()
                                .doubt()
                                .filter(doubt -> doubt.severity().isAtLeast(least))
                                .isPresent())
                        .toList(),
                accepted,
                stale,
                carriers,
                failures,
                notices);
    }

    /** How many open doubts there are of a severity. */
    public long count(Severity severity) {
        return glosses.stream()
                .filter(gloss -> gloss.finding()
                        .doubt()
                        .filter(doubt -> doubt.severity() == severity)
                        .isPresent())
                .count();
    }
}
