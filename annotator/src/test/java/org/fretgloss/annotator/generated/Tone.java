package org.fretgloss.annotator.generated;

import java.util.List;

/**
 * One note or rest of the made-up music.
 *
 * @param length in twelfths of a quarter note; 0 for a grace note
 * @param string 1 to 6 in standard tuning; 0 for a rest
 * @param triplet 1, 2 or 3 within a triplet, otherwise 0
 * @param marks what is played on it
 */
record Tone(int length, int string, int fret, int triplet, List<Mark> marks) {

    /** How a note is reached, held or left. */
    enum Mark {
        CHORD,
        TIE_START,
        TIE_STOP,
        BEND,
        BEND_RELEASE,
        BEND_TO_HEIGHT,
        PRE_BEND,
        BAR_DIP,
        HAMMER_START,
        HAMMER_STOP,
        PULL_START,
        PULL_STOP,
        SLIDE_START,
        SLIDE_STOP,
        VIBRATO,
        HARMONIC
    }

    private static final int[] OPEN = {64, 59, 55, 50, 45, 40};
    private static final String[] STEPS = {"C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"};

    Tone {
        marks = List.copyOf(marks);
    }

    static Tone rest(int length) {
        return new Tone(length, 0, 0, 0, List.of());
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

    String step() {
        return STEPS[midi() % 12].substring(0, 1);
    }

    boolean isSharp() {
        return STEPS[midi() % 12].length() > 1;
    }

    int octave() {
        return midi() / 12 - 1;
    }

    private int midi() {
        return OPEN[string - 1] + fret;
    }
}
