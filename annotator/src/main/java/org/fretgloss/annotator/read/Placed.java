package org.fretgloss.annotator.read;

import org.fretgloss.time.Fraction;

/**
 * Something that stands at a moment of a bar.
 *
 * @param item what stands there
 * @param bar index of the bar, from 0
 * @param at quarter notes from the start of the bar
 */
record Placed<T>(T item, int bar, Fraction at) {}
