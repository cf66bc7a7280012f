package org.fretgloss.solo;

import org.fretgloss.time.Fraction;

/**
 * A tempo from a moment on.
 *
 * @param onset quarter notes from the start of the part
 * @param quartersPerMinute above 0
 */
public record Tempo(Fraction onset, double quartersPerMinute) {}
