package org.fretgloss.annotator;

import java.util.List;
import java.util.Map;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.annotator.config.Silenced;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.RuleFailure;
import org.fretgloss.rule.Severity;

/**
 * What proof-reading made of a score.
 *
 * @param score the score as it was named
 * @param analysis what the solo means
 * @param doubts the doubts, in order of onset: those that are open and those that the teacher lets stand
 * @param scope how much of what was asked could be looked at
 * @param carriers ordinal of a note to the ordinal of the element that would bear its lyric
 * @param failures checks that failed; the doubts of the others stand
 * @param notices what the user should know, a line each
 */
public record Checked(
        String score,
        Analysis analysis,
        Silenced doubts,
        Scope scope,
        Map<Integer, Integer> carriers,
        List<RuleFailure> failures,
        List<String> notices)
        implements Report {

    public Checked {
        carriers = Map.copyOf(carriers);
        failures = List.copyOf(failures);
        notices = List.copyOf(notices);
    }

    /** The doubts that are open. */
    @Override
    public List<Gloss> glosses() {
        return doubts.open();
    }

    /** The same without open doubts that weigh less. */
    public Checked from(Severity least) {
        List<Gloss> heavy = glosses().stream()
                .filter(gloss -> gloss.finding()
                        .doubt()
                        .filter(doubt -> doubt.severity().isAtLeast(least))
                        .isPresent())
                .toList();
        return new Checked(score, analysis, doubts.withOpen(heavy), scope, carriers, failures, notices);
    }

    /** How many open doubts there are of a severity. */
    public long count(Severity severity) {
        return glosses().stream()
                .filter(gloss -> gloss.finding()
                        .doubt()
                        .filter(doubt -> doubt.severity() == severity)
                        .isPresent())
                .count();
    }
}
