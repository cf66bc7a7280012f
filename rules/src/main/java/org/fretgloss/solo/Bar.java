package org.fretgloss.solo;

import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/**
 * A bar as printed, repeats not unrolled.
 *
 * @param index place among the part's bars, from 0
 * @param number as printed; "0" for an unnumbered or implicit pick-up
 * @param start quarter notes from the start of the part
 * @param length how long the bar lasts here, in quarter notes: its meter's length, or what its longest voice fills
 * @param filled what the longest voice fills, in quarter notes
 * @param lead quarter notes of the meter that are missing before the bar's first moment, for a short pick-up that is
 *     right-aligned; otherwise 0
 * @param meter the meter in force
 * @param key the key signature in force
 * @param repeatsForward whether a repeated section begins here
 * @param repeatsBackward whether a repeated section ends here
 * @param implicit whether it is not counted: a pick-up, or the rest of a bar that a sign splits
 */
public record Bar(
        int index,
        String number,
        Fraction start,
        Fraction length,
        Fraction filled,
        Fraction lead,
        Meter meter,
        KeySignature key,
        boolean repeatsForward,
        boolean repeatsBackward,
        boolean implicit) {

    public Fraction end() {
        return start.plus(length);
    }

    public boolean isPickUp() {
        return lead.isPositive();
    }

    /** Whether the bar lasts as long as its meter says. */
    public boolean isFull() {
        return length.equals(meter.barLength());
    }

    /** The beat of a moment, counted from 1 in the meter's own beats; 5/2 is the middle of beat 2. */
    public Fraction beatAt(Fraction moment) {
        return moment.minus(start).plus(lead).dividedBy(meter.beatLength()).plus(Fraction.ONE);
    }
}
