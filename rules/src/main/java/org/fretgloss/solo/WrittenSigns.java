package org.fretgloss.solo;

import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.time.Fraction;

/**
 * Signs of a note as they stand in the score, whether or not they make sense.
 *
 * @param offNeck string and fret that are written and lie on no neck; such a note has no place
 * @param tiedTo the place that a tie from this note leads to, where it is another one
 * @param tieFromNowhere whether a tie ends here that begins nowhere
 * @param beginsLegato whether a hammer-on or pull-off begins here
 * @param endsLegato whether one ends here
 * @param looseRelease whether a release of a bend stands first, without a bend to release
 * @param unreadBend semitones of a bend that is too wide to be read as one
 * @param bendLabel semitones that a text says beside a bend
 */
public record WrittenSigns(
        Optional<StringFret> offNeck,
        Optional<StringFret> tiedTo,
        boolean tieFromNowhere,
        boolean beginsLegato,
        boolean endsLegato,
        boolean looseRelease,
        Optional<Fraction> unreadBend,
        Optional<Fraction> bendLabel) {

    /** No such sign. */
    public static final WrittenSigns NONE = new WrittenSigns(
            Optional.empty(), Optional.empty(), false, false, false, false, Optional.empty(), Optional.empty());

    /** These signs, and a hammer-on or pull-off that begins. */
    public WrittenSigns beginningLegato() {
        return new WrittenSigns(offNeck, tiedTo, tieFromNowhere, true, endsLegato, looseRelease, unreadBend, bendLabel);
    }
}
