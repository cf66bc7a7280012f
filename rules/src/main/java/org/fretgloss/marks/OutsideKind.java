package org.fretgloss.marks;

import java.util.Locale;

/** What a note outside scale and chord does there; the first that fits, in this order. */
enum OutsideKind {
    /** One of two neighbours, above and below, that close in on a chord tone. */
    ENCLOSURE("encl ", 0.8),
    /** A semitone into a chord tone. */
    APPROACH("appr ", 0.85),
    /** Short, off the beat, by step to an inside note. */
    PASSING("pass ", 0.8),
    /** One of the usual added notes of a blues. */
    ADDED("", 0.85),
    /** None of these: whether it is meant is for the teacher to hear. */
    OUTSIDE("", 0.75);

    private final String prefix;
    private final double confidence;

    OutsideKind(String prefix, double confidence) {
        this.prefix = prefix;
        this.confidence = confidence;
    }

    /** What stands before the degree in the score, with a blank after it; empty where the degree stands alone. */
    String prefix() {
        return prefix;
    }

    /** How sure the judgement is where the chord is known. */
    double confidence() {
        return confidence;
    }

    /** "passing". */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
