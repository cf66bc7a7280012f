package org.fretgloss.fingering;

/** What a grip costs by itself, wherever the hand comes from. */
final class Stretching {

    /** For each fret that it is wider than three, up to a width that no hand has. */
    private static final double FRET = 5.3;

    private static final int EASY_SPAN = 2;
    private static final int WIDEST_SPAN = 8;

    /** For more fingers than a hand has, a barre on the lowest fret counted as one. */
    private static final double FIFTH_FINGER = 1.5;

    private static final int FINGERS = 4;

    /** For each string between those of a grip that is not struck. */
    private static final double SKIPPED_STRING = 0.68;

    private Stretching() {}

    static double cost(Grip grip) {
        return FRET * Math.max(0, Math.min(grip.span(), WIDEST_SPAN) - EASY_SPAN)
                + (fingers(grip) > FINGERS ? FIFTH_FINGER : 0)
                + SKIPPED_STRING * skippedStrings(grip);
    }

    private static int fingers(Grip grip) {
        int onLowest = 0;
        int others = 0;
        for (int note = 0; note < grip.size(); note++) {
            if (grip.isPlayed(note) && grip.fret(note) > 0) {
                onLowest = grip.fret(note) == grip.lowest() ? 1 : onLowest;
                others += grip.fret(note) > grip.lowest() ? 1 : 0;
            }
        }
        return onLowest + others;
    }

    private static int skippedStrings(Grip grip) {
        int first = Integer.MAX_VALUE;
        int last = 0;
        int played = 0;
        for (int note = 0; note < grip.size(); note++) {
            if (grip.isPlayed(note)) {
                first = Math.min(first, grip.string(note));
                last = Math.max(last, grip.string(note));
                played++;
            }
        }
        return played > 1 ? last - first + 1 - played : 0;
    }
}
