package org.fretgloss.solo;

import java.util.List;
import org.fretgloss.pitch.Pitch;

/**
 * What stands in the score for a note, kept for proof-reading beside what it sounds like.
 *
 * @param pitch as written on the staff, before any transposition
 * @param offset semitones from the fretted pitch up to the written one; 0 where there is no fret
 * @param elements ordinals of all note elements of the note, in order: several where it is tied
 * @param tieOpen whether a tie begins at its last element and ends nowhere
 * @param signs signs that music alone does not show
 */
public record Written(Pitch pitch, int offset, List<Integer> elements, boolean tieOpen, WrittenSigns signs) {

    public Written {
        elements = List.copyOf(elements);
    }

    /** Without signs worth a look. */
    public Written(Pitch pitch, int offset, List<Integer> elements, boolean tieOpen) {
        this(pitch, offset, elements, tieOpen, WrittenSigns.NONE);
    }
}
