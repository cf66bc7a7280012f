package org.fretgloss.annotator.slips;

import java.util.OptionalInt;

/**
 * A score with one slip in it.
 *
 * @param score the score without it
 * @param text the score with it
 * @param bar the number of the bar it stands in
 * @param fret what stood there before, where the slip is a fret on the same string
 */
record Slip(CleanScore score, String text, String bar, OptionalInt fret) {

    static Slip at(CleanScore score, int note, NoteText written) {
        return new Slip(score, score.with(note, written), score.bars().get(note), OptionalInt.empty());
    }

    static Slip ofFret(CleanScore score, int note, NoteText written) {
        return new Slip(
                score,
                score.with(note, written),
                score.bars().get(note),
                score.note(note).fret());
    }
}
