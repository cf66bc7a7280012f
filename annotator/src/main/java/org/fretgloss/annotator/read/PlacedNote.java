package org.fretgloss.annotator.read;

import org.audiveris.proxymusic.Note;
import org.fretgloss.time.Fraction;

/**
 * A note element in its place in time.
 *
 * @param note the element
 * @param bar index of the bar, from 0
 * @param at quarter notes from the start of the bar
 * @param duration quarter notes; 0 for a grace note
 * @param transposition semitones from the written pitch to the sounding one, as the part declares it here
 */
record PlacedNote(Note note, int bar, Fraction at, Fraction duration, int transposition) {

    /** Whether it sounds up to a moment of the bar. */
    boolean endsAt(Fraction moment) {
        return duration.isPositive() && at.plus(duration).equals(moment);
    }

    /** Whether it lasts as long as its printed value says. */
    boolean isAsPrinted() {
        return Lengths.printed(note).filter(duration::equals).isPresent();
    }

    /** The same note, sounding up to a moment of the bar. */
    PlacedNote lastingTo(Fraction end) {
        return new PlacedNote(note, bar, at, end.minus(at), transposition);
    }
}
