package org.fretgloss.analysis;

import java.util.Optional;

/**
 * What a phrase is called among the others.
 *
 * @param letter A, B, C ... in order, AA after Z; that of the earlier phrase where it repeats or varies one
 * @param variantOf the letter of the phrase that it repeats or varies
 * @param answers the letter of the phrase before, where that one calls and this one answers
 */
public record PhraseName(String letter, Optional<String> variantOf, Optional<String> answers) {

    private static final String PRIME = "′";

    /** The letter, with a prime where it is not the first phrase of that letter: A′. */
    public String text() {
        return variantOf.isPresent() ? letter + PRIME : letter;
    }
}
