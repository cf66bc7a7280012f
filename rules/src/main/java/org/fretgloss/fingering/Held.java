package org.fretgloss.fingering;

import org.fretgloss.time.Fraction;

/** Which strings still sound, and which fingers are still down, when a hand comes to an onset. */
final class Held {

    /** A finger that was put down within the last quarter note is still there. */
    private static final Fraction MOMENT = Fraction.ONE;

    /** However long it is written, nothing that was struck so many quarter notes ago is held. */
    private static final Fraction LONGEST = Fraction.of(4);

    private final int[] frets;
    private final boolean[] sounding;
    private final boolean[] down;
    private final boolean[] kept;

    private Held(int strings) {
        this.frets = new int[strings + 1];
        this.sounding = new boolean[strings + 1];
        this.down = new boolean[strings + 1];
        this.kept = new boolean[strings + 1];
    }

    static Held of(Hand hand, Onset onset) {
        Held held = new Held(hand.strings());
        Fraction momentAgo = onset.time().minus(MOMENT);
        Fraction longAgo = onset.time().minus(LONGEST);
        for (int string = 1; string <= held.strings(); string++) {
            boolean isFretted = hand.fret(string) > 0;
            held.frets[string] = hand.fret(string);
            held.sounding[string] = hand.sounds(onset.time(), string);
            held.down[string] = isFretted && hand.hasStruckSince(momentAgo, string);
            held.kept[string] = isFretted && held.sounding[string] && hand.hasStruckSince(longAgo, string);
        }
        return held;
    }

    int strings() {
        return frets.length - 1;
    }

    /** The fret last struck on a string. */
    int fret(int string) {
        return frets[string];
    }

    /** Whether a string sounds, fretted or open. */
    boolean sounds(int string) {
        return sounding[string];
    }

    /** Whether a finger was put down on it a moment ago. */
    boolean isDown(int string) {
        return down[string];
    }

    /** Whether a finger keeps its note sounding. */
    boolean isKept(int string) {
        return kept[string];
    }
}
