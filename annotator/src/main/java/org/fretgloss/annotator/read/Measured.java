package org.fretgloss.annotator.read;

import java.util.Optional;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/**
 * A bar of one part, measured by itself.
 *
 * @param number as the file has it, which may be empty
 * @param implicit whether the number is not printed, as for pick-ups
 * @param meter the meter in force; none where the music is free (senza misura)
 * @param key the key signature in force
 * @param filled what the longest voice fills, in quarter notes
 * @param repeatsForward whether a repeated section begins here
 * @param repeatsBackward whether a repeated section ends here
 */
record Measured(
        String number,
        boolean implicit,
        Optional<Meter> meter,
        KeySignature key,
        Fraction filled,
        boolean repeatsForward,
        boolean repeatsBackward) {}
