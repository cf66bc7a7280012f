package org.fretgloss.analysis;

import java.util.Optional;

/**
 * What a phrase is called among the others.
 *
 * @param letter A, B, C ... in order, AA after Z; that of the earlier phrase where it repeats or varies one
 * @param isVariant whether it repeats or varies an earlier phrase
 * @param answers the letter of the phrase before, where that one calls and this one answers
 */
public record PhraseName(String letter, boolean isVariant, Optional<String> answers) {

    private static final String PRIME = "′";

    /** The letter, with a prime where it is not the first phrase of that letter: A′. */
    public String text() {
        return isVariant ? letter + PRIME : letter;
    }
}
