package org.fretgloss.fingering;

import java.util.Arrays;
import org.fretgloss.neck.StringFret;

/** Where the fingers are for the notes of an onset: a string of its own for each, or none where no string is left. */
final class Grip {

    static final int NO_STRING = 0;

    private final int[] strings;
    private final int[] frets;
    private final int lowest;
    private final int highest;

    /**
     * Places in the order of the onset's notes.
     *
     * @param strings from 1; {@link #NO_STRING} for a note that is left out
     * @param frets of the notes that have a string
     */
    Grip(int[] strings, int[] frets) {
        this.strings = strings.clone();
        this.frets = frets.clone();
        int least = Integer.MAX_VALUE;
        int most = 0;
        for (int note = 0; note < strings.length; note++) {
            if (strings[note] != NO_STRING && frets[note] > 0) {
                least = Math.min(least, frets[note]);
                most = Math.max(most, frets[note]);
            }
        }
        this.lowest = most == 0 ? 0 : least;
        this.highest = most;
    }

    int size() {
        return strings.length;
    }

    int string(int note) {
        return strings[note];
    }

    int fret(int note) {
        return frets[note];
    }

    boolean isPlayed(int note) {
        return strings[note] != NO_STRING;
    }

    boolean uses(int string) {
        for (int taken : strings) {
            if (taken == string) {
                return true;
            }
        }
        return false;
    }

    /** The lowest fret under a finger, 0 where all strings are open. */
    int lowest() {
        return lowest;
    }

    /** The highest fret under a finger, 0 where all strings are open. */
    int highest() {
        return highest;
    }

    int span() {
        return highest - lowest;
    }

    boolean isFretted() {
        return highest > 0;
    }

    /** Where a note lies that {@linkplain #isPlayed is played}. */
    StringFret place(int note) {
        return new StringFret(strings[note], frets[note]);
    }

    /** Whether the notes lie on the same strings, one for one. */
    boolean sharesStringsWith(Grip other) {
        return Arrays.equals(strings, other.strings);
    }

    /** Whether the other is the same shape, moved along the neck. */
    boolean isMovedFrom(Grip other) {
        int move = frets[0] - other.frets[0];
        for (int note = 1; note < frets.length; note++) {
            if (frets[note] - other.frets[note] != move) {
                return false;
            }
        }
        return move != 0 && sharesStringsWith(other);
    }
}
