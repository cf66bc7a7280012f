package org.fretgloss.neck;

import java.util.List;

/**
 * One of the five boxes of the minor pentatonic at one place on the neck: two notes on each string, fewer where the neck
 * ends, and whatever lies in the window on a string that is retuned alone.
 *
 * @param number 1 to 5; box 1 has the pattern's tonic under the first finger on the lowest string
 * @param pattern the frets on each string, string 1 first, counted from the capo, rising
 * @param lowestFret the window's lower end: the lowest fret of the pattern over all strings
 * @param highestFret the window's upper end
 */
public record Box(int number, List<List<Integer>> pattern, int lowestFret, int highestFret) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there is no such box, or its window is none
     */
    public Box {
        if (number < 1 || number > 5 || lowestFret > highestFret) {
            throw new IllegalArgumentException("no box " + number + " at frets " + lowestFret + " to " + highestFret);
        }
        pattern = pattern.stream().map(List::copyOf).toList();
    }

    /** Whether the window holds the place; an open string belongs to every box. */
    public boolean windowHolds(StringFret at) {
        return reach(at) == 0;
    }

    /** How far a place lies outside the window, in frets: below it negative, above it positive, inside or open 0. */
    public int reach(StringFret at) {
        if (at.isOpen()) {
            return 0;
        }
        if (at.fret() < lowestFret) {
            return at.fret() - lowestFret;
        }
        return Math.max(0, at.fret() - highestFret);
    }

    /** Whether the place is one of the pattern's own notes. */
    public boolean patternHolds(StringFret at) {
        return at.string() >= 1
                && at.string() <= pattern.size()
                && pattern.get(at.string() - 1).contains(at.fret());
    }
}
