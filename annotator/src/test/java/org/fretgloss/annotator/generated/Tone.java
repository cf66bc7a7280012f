package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.List;

/**
 * One note or rest of the made-up music.
 *
 * @param length in twelfths of a quarter note; 0 for a grace note
 * @param string from 1; 0 for a rest
 * @param triplet 1, 2 or 3 within a triplet, otherwise 0
 * @param marks what is played on it, and how it is written
 * @param bends the course of its bend; empty where there is none
 */
record Tone(int length, int string, int fret, int triplet, List<Mark> marks, List<Bend> bends) {

    /** How a note is reached, held or left, and what else is written of it. */
    enum Mark {
        CHORD,
        TIE_START,
        TIE_STOP,
        HAMMER_START,
        HAMMER_STOP,
        PULL_START,
        PULL_STOP,
        SLIDE_START,
        SLIDE_STOP,
        VIBRATO,
        HARMONIC,
        TAP,
        DEAD,
        UNPITCHED,
        CUE,
        WHOLE_BAR,
        HIDDEN,
        FORWARD
    }

    Tone {
        marks = List.copyOf(marks);
        bends = List.copyOf(bends);
    }

    static Tone note(int length, int string, int fret, Mark... marks) {
        return new Tone(length, string, fret, 0, List.of(marks), List.of());
    }

    static Tone rest(int length, Mark... marks) {
        return note(length, 0, 0, marks);
    }

    Tone with(Mark mark) {
        List<Mark> more = new ArrayList<>(marks);
        more.add(mark);
        return new Tone(length, string, fret, triplet, more, bends);
    }

    Tone bent(List<Bend> course) {
        return new Tone(length, string, fret, triplet, marks, course);
    }

    Tone inTriplet(int place) {
        return new Tone(length, string, fret, place, marks, bends);
    }

    boolean isRest() {
        return string == 0;
    }

    boolean isGrace() {
        return length == 0;
    }

    boolean has(Mark mark) {
        return marks.contains(mark);
    }

    /** Whether nothing is special about it. */
    boolean isPlain() {
        return marks.isEmpty() && bends.isEmpty() && triplet == 0 && !isRest() && !isGrace();
    }
}
