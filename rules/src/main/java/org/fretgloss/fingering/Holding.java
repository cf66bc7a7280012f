package org.fretgloss.fingering;

/** What it costs that strings still sound and fingers are still down. */
final class Holding {

    /** For striking a string that still sounds. */
    private static final double CUT_OFF = 2.6;

    /** For each fret out of reach of a finger whose note still sounds. */
    private static final double LET_GO = 4.6;

    /** For each fret, up to four, out of reach of a finger that was put down a moment ago. */
    private static final double BROKEN_SHAPE = 0.39;

    private static final int MOST_BROKEN = 4;

    /** Frets within which fingers stay down. */
    private static final int REACH = 3;

    private Holding() {}

    static double cost(Held held, Onset onset, Grip grip, int note) {
        double cost = held.sounds(grip.string(note)) && !onset.isGrace() ? CUT_OFF : 0;
        int fret = grip.fret(note);
        for (int string = 1; fret > 0 && string <= held.strings(); string++) {
            int beyond = Math.abs(held.fret(string) - fret) - REACH;
            if (string != grip.string(note) && beyond > 0) {
                cost += held.isKept(string) ? LET_GO * beyond : 0;
                cost += held.isDown(string) ? BROKEN_SHAPE * Math.min(beyond, MOST_BROKEN) : 0;
            }
        }
        return cost;
    }
}
