package org.fretgloss.rule;

import java.util.Optional;

/**
 * A finding as it reaches the score.
 *
 * @param rule the id of the rule that found it
 * @param line the lyric line it belongs to, its rule's
 * @param finding what was found
 * @param text what its line shows for it; none where it is absorbed, unsure, equal to the text before it, or unwritten
 */
public record Gloss(String rule, Line line, Finding finding, Optional<String> text) {

    /** The same finding, not written. */
    public Gloss unwritten() {
        return new Gloss(rule, line, finding, Optional.empty());
    }
}
