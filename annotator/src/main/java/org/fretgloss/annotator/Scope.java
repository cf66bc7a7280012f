package org.fretgloss.annotator;

/** How much of what was asked of a proof-reading could be looked at. */
public enum Scope {
    /** Every check that was asked, and every note. */
    ALL,
    /** Not every check, or not every note. */
    PART,
    /** No check: all that were asked need string and fret, and the score has none. */
    NOTHING
}
