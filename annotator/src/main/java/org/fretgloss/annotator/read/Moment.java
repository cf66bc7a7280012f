package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/**
 * When strokes of one sort begin together.
 *
 * @param onset quarter notes from the start of the part
 * @param grace whether they are the grace notes that lean on this moment
 */
record Moment(Fraction onset, boolean grace) {

    static Moment of(Stroke stroke) {
        return new Moment(stroke.onset(), stroke.grace());
    }
}
