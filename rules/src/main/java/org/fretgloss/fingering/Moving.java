package org.fretgloss.fingering;

/** What it costs to move the hand along the neck. */
final class Moving {

    /** For moving it at all, for each fret, and for each fret from the fifth on. */
    private static final double AT_ALL = 0.79;

    private static final double FRET = 0.85;
    private static final double FAR_FRET = 1.2;

    /** Frets that are not far. */
    private static final int NEAR = 4;

    /** For haste: the less time there is, the more, and less for a move of fewer than four frets. */
    private static final double HASTE = 1.5;

    /** Quarter notes that even the fastest move has, as it begins while the note before sounds. */
    private static final double HEAD_START = 0.5;

    private Moving() {}

    static double cost(Hand hand, Onset onset, Grip grip) {
        int frets = Math.abs(hand.positionFor(grip) - hand.position());
        if (frets == 0 || hand.isAtRest()) {
            return 0;
        }
        return AT_ALL
                + FRET * frets
                + FAR_FRET * Math.max(0, frets - NEAR)
                + HASTE
                        * Math.min(1, (double) frets / NEAR)
                        / (HEAD_START + onset.sinceLast().toDouble());
    }
}
