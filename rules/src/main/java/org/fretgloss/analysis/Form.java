package org.fretgloss.analysis;

import org.fretgloss.solo.Bar;

/**
 * A progression laid over a solo.
 *
 * @param progression the chords
 * @param start the bar of the solo in which the progression first begins
 */
public record Form(Progression progression, Bar start) {

    /**
     * A bar's place in the form.
     *
     * @param chorus counted from 1 at the form's first bar; a lead-in stands in chorus 0
     * @param bar 1 to the form's length
     */
    public record Place(int chorus, int bar) {}

    /** Where a bar stands in the form; bars before the form's start count backwards into the chorus before. */
    public Place placeOf(Bar bar) {
        int distance = bar.index() - start.index();
        int length = progression.bars().size();
        return new Place(Math.floorDiv(distance, length) + 1, Math.floorMod(distance, length) + 1);
    }
}
