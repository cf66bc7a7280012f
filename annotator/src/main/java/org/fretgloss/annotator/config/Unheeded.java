package org.fretgloss.annotator.config;

import java.util.List;
import org.fretgloss.annotator.names.Nearest;

/** What the user is told of decisions that cannot be heeded: their check is misspelt, or its jar is not there. */
public final class Unheeded {

    private Unheeded() {}

    /** A line for each such decision, in the order of the file. */
    public static List<String> notices(Corrections corrections, List<String> checks) {
        return corrections.accepted().stream()
                .filter(entry -> !checks.contains(entry.rule()))
                .map(entry -> "the accepted " + entry + " has no effect: no such check is known here; "
                        + Nearest.of(entry.rule(), checks)
                                .map(name -> "did you mean '" + name + "'?")
                                .orElse("the jar of rules that has it may be missing"))
                .toList();
    }
}
