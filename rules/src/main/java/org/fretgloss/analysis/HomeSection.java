package org.fretgloss.analysis;

/**
 * A stretch of a solo with one home; it reaches to the next section's first note.
 *
 * @param from the index of its first note
 * @param home where it is at home
 */
public record HomeSection(int from, Home home) {}
