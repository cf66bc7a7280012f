package org.fretgloss.analysis;

import org.fretgloss.neck.Box;
import org.fretgloss.solo.Note;

/**
 * The notes played from one box.
 *
 * @param box the box in force
 * @param first the note it begins on
 * @param last the last note before the next box
 */
public record BoxSpan(Box box, Note first, Note last) {}
