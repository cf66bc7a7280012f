package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;

/**
 * One note element that sounds, as it is written.
 *
 * @param ordinal 1-based place among all note elements of the document
 * @param bar the bar it begins in
 * @param onset quarter notes from the start of the part
 * @param duration quarter notes; 0 for a grace note
 * @param staff the staff of the part, from 1
 * @param voice the voice it is written in
 * @param chordMember whether it is a further note of a chord
 * @param grace whether it is a grace note
 * @param hidden whether it is not printed
 * @param tieStart whether a tie begins here
 * @param tieStop whether a tie ends here
 * @param pitch the written pitch; absent where only string and fret stand
 * @param place string and fret as written
 * @param transposition semitones from written to sounding pitch, as the part declares it
 * @param marks what is written about its playing
 */
record NoteElement(
        int ordinal,
        Bar bar,
        Fraction onset,
        Fraction duration,
        int staff,
        String voice,
        boolean chordMember,
        boolean grace,
        boolean hidden,
        boolean tieStart,
        boolean tieStop,
        Optional<Pitch> pitch,
        Optional<StringFret> place,
        int transposition,
        Marks marks) {

    /**
     * The element in the same bar of another part, under its staves.
     *
     * @param bars the other part's
     * @param staves how many staves it has
     */
    NoteElement movedTo(List<Bar> bars, int staves) {
        return new NoteElement(
                ordinal,
                bars.get(bar.index()),
                onset,
                duration,
                staff + staves,
                voice,
                chordMember,
                grace,
                hidden,
                tieStart,
                tieStop,
                pitch,
                place,
                transposition,
                marks);
    }

    Fraction end() {
        return onset.plus(duration);
    }
}
