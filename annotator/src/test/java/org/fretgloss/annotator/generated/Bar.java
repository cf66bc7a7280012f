package org.fretgloss.annotator.generated;

import java.util.List;

/**
 * One bar of the made-up music.
 *
 * @param changesMeter whether the meter is written in it
 * @param restBars how many bars of rest begin here that are written as one; 0 for none
 */
record Bar(Meter meter, boolean changesMeter, int restBars, List<Tone> tones) {

    /** A time signature. */
    record Meter(int beats, int beatType) {

        /** In twelfths of a quarter note. */
        int length() {
            return beats * 4 * Grammar.QUARTER / beatType;
        }
    }

    Bar {
        tones = List.copyOf(tones);
    }

    /** What is written in it, in twelfths of a quarter note. */
    int length() {
        return Grammar.length(tones);
    }
}
