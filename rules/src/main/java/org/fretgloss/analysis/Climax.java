package org.fretgloss.analysis;

import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;

/**
 * The two to four bars that stand out most.
 *
 * @param bar the first bar of the window
 * @param bars how many bars it has
 * @param first the first note in it
 * @param last the last note in it
 * @param density how far its notes per beat stand above the solo's windows, in standard deviations
 * @param register the same for mean pitch
 * @param bend the same for bend width
 */
public record Climax(Bar bar, int bars, Note first, Note last, double density, double register, double bend) {}
