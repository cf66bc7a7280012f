package org.fretgloss.analysis;

import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * A stretch between two notes in which nothing sounds.
 *
 * @param before the last note struck before it
 * @param after the first note after it
 * @param start quarter notes from the start of the part
 * @param end the onset of the note after
 * @param beats its length, each bar's part counted in the beats of that bar's meter
 */
public record Silence(Note before, Note after, Fraction start, Fraction end, Fraction beats) {}
