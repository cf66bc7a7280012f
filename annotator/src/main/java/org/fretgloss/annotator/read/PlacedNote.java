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

    /** The same note where a moment of its bar comes later: a note that ended then lasts on, one that begins then moves. */
    PlacedNote movingEnd(Fraction from, Fraction to) {
        if (endsAt(from)) {
            return new PlacedNote(note, bar, at, to.minus(at), transposition);
        }
        return at.equals(from) ? new PlacedNote(note, bar, to, duration, transposition) : this;
    }
}
