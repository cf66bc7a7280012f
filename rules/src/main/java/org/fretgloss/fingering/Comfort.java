package org.fretgloss.fingering;

import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Note;

/** What speaks against a place besides the hand's own effort: that it lies outside the box that the music is in. */
@FunctionalInterface
public interface Comfort {

    /** The hand's own effort decides alone. */
    Comfort NEUTRAL = (note, at) -> 0;

    /** How far a place lies out of the way, in frets; 0 where it does not. */
    int fretsAstray(Note note, StringFret at);
}
