package org.fretgloss.fingering;

import java.util.Arrays;
import java.util.Optional;
import org.fretgloss.time.Fraction;

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

    /** By string: the fret last struck on it, when, and until when it sounds; times in quarter notes. */
    private final int[] frets;

    private final Fraction[] struck;
    private final Fraction[] ends;

    private Hand(
            Optional<Hand> before,
            Optional<Grip> grip,
            double cost,
            int position,
            int[] frets,
            Fraction[] struck,
            Fraction[] ends) {
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
        Fraction[] never = new Fraction[strings + 1];
        Arrays.fill(never, Fraction.ZERO);
        return new Hand(Optional.empty(), Optional.empty(), 0, 1, frets, never, never);
    }

    /** The hand after taking a grip. */
    Hand take(Grip next, Onset onset, double costSoFar) {
        int[] newFrets = frets.clone();
        Fraction[] newStruck = struck.clone();
        Fraction[] newEnds = ends.clone();
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

    /** Whether something has been struck on a string since a moment, or at it. */
    boolean hasStruckSince(Fraction moment, int string) {
        return frets[string] != SILENT && struck[string].compareTo(moment) >= 0;
    }

    /** Whether a string still sounds at a moment. */
    boolean sounds(Fraction moment, int string) {
        return frets[string] != SILENT && ends[string].isMoreThan(moment);
    }

    /** Whether what follows costs both the same, but for what they remember. */
    boolean isLike(Hand other) {
        return position == other.position && Arrays.equals(frets, other.frets);
    }
}
