package org.fretgloss.rule;

import java.util.Optional;
import org.fretgloss.solo.Bar;

/**
 * A rule that broke while it examined a solo. The other rules' findings stand.
 *
 * @param rule its id
 * @param provider the name of the set it comes from
 * @param after the bar of its last finding before it broke, which tells where to look; none where it had found nothing
 * @param cause what it threw
 */
public record RuleFailure(String rule, String provider, Optional<Bar> after, Throwable cause) {

    /** One line for a person: which rule, whose, where, and what it threw. */
    public String message() {
        String place =
                after.map(bar -> " after its finding in bar " + bar.number()).orElse(" before its first finding");
        return "the rule '" + rule + "' of " + provider + " failed" + place + " and was left out: " + cause;
    }
}
