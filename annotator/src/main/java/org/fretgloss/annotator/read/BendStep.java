package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/**
 * One bend element: a movement of a string.
 *
 * @param semitones how far, against where the string was; a release goes down
 * @param kind which sort of movement
 */
record BendStep(Fraction semitones, Kind kind) {

    enum Kind {
        BEND,
        PRE_BEND,
        RELEASE
    }
}
