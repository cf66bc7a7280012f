package org.fretgloss.neck;

/**
 * A place on the fretboard.
 *
 * @param string 1 is the thinnest string of a guitar
 * @param fret 0 is the open string; counted from the capo
 */
public record StringFret(int string, int fret) {

    /** The highest fret, of whatever sign, that is told by its number; one that is written beyond is one more. */
    public static final int FARTHEST = 999_999;

    /** Whether the fret stands for any that is written beyond the farthest that is told. */
    public boolean isBeyondTelling() {
        return Math.abs(fret) > FARTHEST;
    }

    /** "fret 31", "a fret beyond 999999", "a fret below -999999". */
    public String fretInWords() {
        if (!isBeyondTelling()) {
            return "fret " + fret;
        }
        return fret > 0 ? "a fret beyond " + FARTHEST : "a fret below -" + FARTHEST;
    }

    public boolean isOpen() {
        return fret == 0;
    }

    /** "2/8": string 2, fret 8. */
    @Override
    public String toString() {
        return string + "/" + fret;
    }
}
