package org.fretgloss.neck;

/**
 * A place on the fretboard.
 *
 * @param string 1 is the thinnest string of a guitar
 * @param fret 0 is the open string; counted from the capo
 */
public record StringFret(int string, int fret) {

    public boolean isOpen() {
        return fret == 0;
    }

    /** "2/8": string 2, fret 8. */
    @Override
    public String toString() {
        return string + "/" + fret;
    }
}
