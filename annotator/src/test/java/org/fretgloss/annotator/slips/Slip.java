package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A score with one slip in it.
 *
 * @param score the score without it
 * @param text the score with it
 * @param bar the number of the bar in which it must be told; none where it is the whole sheet's
 * @param fret what stood there before, where the slip is a fret on the same string
 * @param said a word that tells this slip from others of the same check
 */
record Slip(CleanScore score, String text, Optional<String> bar, OptionalInt fret, Optional<String> said) {

    /** In the bar of a note. */
    static Slip in(CleanScore score, int note, String text) {
        return new Slip(score, text, Optional.of(score.bars().get(note)), OptionalInt.empty(), Optional.empty());
    }

    static Slip at(CleanScore score, int note, NoteText written) {
        return in(score, note, score.with(note, written));
    }

    static Slip ofFret(CleanScore score, int note, NoteText written) {
        return new Slip(
                score,
                score.with(note, written),
                Optional.of(score.bars().get(note)),
                score.note(note).fret(),
                Optional.empty());
    }

    /** At the head of the score, or missing there. */
    static Slip ofSheet(CleanScore score, String text) {
        return new Slip(score, text, Optional.empty(), OptionalInt.empty(), Optional.empty());
    }

    Slip saying(String word) {
        return new Slip(score, text, bar, fret, Optional.of(word));
    }
}
