package org.fretgloss.rule;

import java.util.List;

/**
 * What a set of rules made of a solo.
 *
 * @param glosses in order of onset, a grace note before its main note, then in order of rules
 * @param failures the rules that failed; of these there are no glosses
 */
public record Examination(List<Gloss> glosses, List<RuleFailure> failures) {

    public Examination {
        glosses = List.copyOf(glosses);
        failures = List.copyOf(failures);
    }
}
