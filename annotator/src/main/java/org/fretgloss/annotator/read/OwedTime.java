package org.fretgloss.annotator.read;

import org.audiveris.proxymusic.Note;
import org.fretgloss.time.Fraction;

/** Time that grace notes took from the note after them, until that note comes. */
final class OwedTime {

    private Fraction owed = Fraction.ZERO;
    private Fraction given = Fraction.ZERO;

    void owe(Fraction stolen) {
        owed = owed.plus(stolen);
    }

    /** Nobody is left to give it to: the voice or the bar ends. */
    void forgive() {
        owed = Fraction.ZERO;
        given = Fraction.ZERO;
    }

    /** How long a main note lasts, with what it is owed; every note of a chord was shortened alike. */
    Fraction returned(Note note, Fraction written) {
        if (note.getChord() == null) {
            given = owed;
            owed = Fraction.ZERO;
        }
        return written.plus(given);
    }
}
