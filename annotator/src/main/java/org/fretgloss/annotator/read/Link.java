package org.fretgloss.annotator.read;

/** A mark that begins on one note and ends on another. */
enum Link {
    HAMMER_ON,
    PULL_OFF,
    SLIDE,
    SLUR,
    VIBRATO;

    boolean isLegato() {
        return this == HAMMER_ON || this == PULL_OFF;
    }
}
