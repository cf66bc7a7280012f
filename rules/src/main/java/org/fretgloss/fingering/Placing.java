package org.fretgloss.fingering;

import org.fretgloss.neck.StringFret;

/** What a place on the neck costs in itself, which depends on how the piece is played. */
final class Placing {

    /** For each fret of height, which guitarists avoid. */
    private static final double HEIGHT = 0.19;

    /** How much more gladly music full of octaves is played high up, for each fret and its share of octaves. */
    private static final double OCTAVE_HEIGHT = 0.43;

    /** For each fret of height in a lead, which has no octaves to go by. */
    private static final double LEAD_HEIGHT = 0.05;

    /** For each fret above the twelfth, where the frets are narrow. */
    private static final double BEYOND_TWELFTH = 1;

    /** The same in a lead, which often climbs there. */
    private static final double LEAD_BEYOND_TWELFTH = 0.7;

    /** For an open string: a little is gained, for it needs no finger; but not in a lead. */
    private static final double OPEN = -1.9;

    private static final double LEAD_OPEN = 3;

    /** For an open string, by each fret that the hand stands up the neck, up to twelve. */
    private static final double OPEN_FROM_AFAR = 0.85;

    private static final int TWELFTH = 12;

    /** For the two outer strings of a guitar, and what is gained on the third; in a lead all strings are alike. */
    private static final double OUTER_STRING = 2;

    private static final double THIRD_STRING = -0.82;

    private final double height;
    private final double beyondTwelfth;
    private final double open;
    private final double outerString;
    private final double thirdString;

    Placing(Style style) {
        this.height = style.isLead() ? LEAD_HEIGHT : HEIGHT - OCTAVE_HEIGHT * style.octaves();
        this.beyondTwelfth = style.isLead() ? LEAD_BEYOND_TWELFTH : BEYOND_TWELFTH;
        this.open = style.isLead() ? LEAD_OPEN : OPEN;
        this.outerString = style.isLead() ? 0 : OUTER_STRING;
        this.thirdString = style.isLead() ? 0 : THIRD_STRING;
    }

    /** What it costs a hand that comes from a position, or before the first note stands where the grip wants it. */
    double cost(Hand hand, Grip grip, StringFret at) {
        int string = at.string();
        int fret = at.fret();
        int position = hand.isAtRest() ? hand.positionFor(grip) : hand.position();
        return height * fret
                + beyondTwelfth * Math.max(0, fret - TWELFTH)
                + (fret == 0 ? open + OPEN_FROM_AFAR * Math.min(position, TWELFTH) : 0)
                + (string == 1 || string == hand.strings() ? outerString : 0)
                + (string == 3 ? thirdString : 0);
    }
}
