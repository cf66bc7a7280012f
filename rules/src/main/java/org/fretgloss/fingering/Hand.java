package org.fretgloss.fingering;

import java.util.Arrays;
import java.util.Optional;

/** The fretting hand at an onset, and how it came there. */
final class Hand {

    /** A string that has not been struck yet. */
    static final int SILENT = -1;

    /** How far the fingers reach from the first without moving the hand: a finger to a fret. */
    private static final int REACH = 3;

    private final Optional<Hand> before;
    private final Optional<Grip> grip;
    private final double cost;
    private final int position;

    /** By string: the fret last struck on it, when, and until when it sounds. */
    private final int[] frets;

    private final double[] struck;
    private final double[] ends;

    private Hand(
            Optional<Hand> before,
            Optional<Grip> grip,
            double cost,
            int position,
            int[] frets,
            double[] struck,
            double[] ends) {
        this.before = before;
        this.grip = grip;
        this.cost = cost;
        this.position = position;
        this.frets = frets;
        this.struck = struck;
        this.ends = ends;
    }

    /** Before the first note. */
    static Hand atRest(int strings) {
        int[] frets = new int[strings + 1];
        Arrays.fill(frets, SILENT);
        return new Hand(
                Optional.empty(), Optional.empty(), 0, 1, frets, new double[strings + 1], new double[strings + 1]);
    }

    /** The hand after taking a grip. */
    Hand take(Grip next, Onset onset, double costSoFar) {
        int[] newFrets = frets.clone();
        double[] newStruck = struck.clone();
        double[] newEnds = ends.clone();
        for (int note = 0; note < next.size(); note++) {
            if (next.isPlayed(note)) {
                newFrets[next.string(note)] = next.fret(note);
                newStruck[next.string(note)] = onset.time();
                newEnds[next.string(note)] = onset.ends().get(note);
            }
        }
        return new Hand(
                Optional.of(this), Optional.of(next), costSoFar, positionFor(next), newFrets, newStruck, newEnds);
    }

    /** The fret under the first finger once the grip is taken: the hand moves no further than it must. */
    int positionFor(Grip next) {
        if (!next.isFretted()) {
            return position;
        }
        int least = Math.min(next.lowest(), Math.max(1, next.highest() - REACH));
        return Math.max(least, Math.min(next.lowest(), position));
    }

    /** The hand some onsets ago; 0 is this one. */
    Hand ago(int onsets) {
        Hand hand = this;
        for (int i = 0; i < onsets; i++) {
            hand = hand.before.orElseThrow();
        }
        return hand;
    }

    /** The grip just taken. */
    Grip grip() {
        return grip.orElseThrow();
    }

    boolean isAtRest() {
        return grip.isEmpty();
    }

    double cost() {
        return cost;
    }

    /** The fret under the first finger. */
    int position() {
        return position;
    }

    int strings() {
        return frets.length - 1;
    }

    /** The fret last struck on a string, or {@link #SILENT}. */
    int fret(int string) {
        return frets[string];
    }

    double struck(int string) {
        return struck[string];
    }

    double end(int string) {
        return ends[string];
    }

    /** Whether what follows costs both the same, but for what they remember. */
    boolean isLike(Hand other) {
        return position == other.position && Arrays.equals(frets, other.frets);
    }
}
