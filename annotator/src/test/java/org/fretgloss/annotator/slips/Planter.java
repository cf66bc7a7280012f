package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.Random;

/** Writes one kind of slip into the text of a score. */
@FunctionalInterface
interface Planter {

    /**
     * The score with the slip in it.
     *
     * @param note the note that it is made at, by its place among the note elements
     * @return none where such a slip does not fit there
     */
    Optional<Slip> plant(CleanScore score, int note, Random random);
}
