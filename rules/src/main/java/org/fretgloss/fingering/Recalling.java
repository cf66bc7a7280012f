package org.fretgloss.fingering;

/** What it costs to take pitches otherwise than before, and what is gained by taking them alike. */
final class Recalling {

    /** For taking a pitch of a moment ago on another string. */
    private static final double OTHER_STRING = 2.4;

    /** For taking the same pitches in another way than the last time. */
    private static final double OTHER_GRIP = 0.18;

    /** For a chord on the strings of the chord before, and further for its very shape moved along the neck: a gain. */
    private static final double SAME_STRINGS = -0.52;

    private static final double MOVED_SHAPE = -4.9;

    private Recalling() {}

    static double cost(Memory memory, Grip grip) {
        double cost = 0;
        if (memory.samePitches().filter(last -> !last.sharesStringsWith(grip)).isPresent()) {
            cost += OTHER_GRIP;
        }
        if (memory.chordBefore().filter(grip::sharesStringsWith).isPresent()) {
            cost += SAME_STRINGS;
            cost += memory.chordBefore().filter(grip::isMovedFrom).isPresent() ? MOVED_SHAPE : 0;
        }
        return cost;
    }

    static double cost(Memory memory, Grip grip, int note) {
        int last = memory.strings().get(note);
        return last != Grip.NO_STRING && last != grip.string(note) ? OTHER_STRING : 0;
    }
}
