package org.fretgloss.analysis;

import java.util.Locale;

/** What a note outside scale and chord does there; the first that fits, in this order. */
public enum OutsideKind {
    /** One of two neighbours, above and below, that close in on a chord tone. */
    ENCLOSURE,
    /** A semitone into a chord tone. */
    APPROACH,
    /** Short, off the beat, by step to an inside note. */
    PASSING,
    /** One of the usual added notes of a blues. */
    ADDED,
    /** None of these: whether it is meant is for the teacher to hear. */
    OUTSIDE;

    /** "passing". */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
