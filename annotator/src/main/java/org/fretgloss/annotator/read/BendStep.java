package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/**
 * One bend element: a movement of a string.
 *
 * @param semitones as the element has it; once its dialect is understood, how far the string moves from where it was, and 0
 *     for a release that lets it down all the way
 * @param kind which sort of movement
 */
record BendStep(Fraction semitones, Kind kind) {

    enum Kind {
        BEND,
        PRE_BEND,
        RELEASE
    }
}
