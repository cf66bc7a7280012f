package org.fretgloss.fingering;

import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/**
 * What it costs a hand to take a grip. The weights were fitted on tabs that people wrote for six strings, to agree with
 * them on as many places as possible; only those of bends, legato and boxes, of which these tabs have hardly any, are
 * common practice without a source. They have no unit: only their proportions matter.
 */
final class Effort {

    /** For each fret of height, which guitarists avoid. */
    private static final double HEIGHT = 0.19;

    /** How much more gladly music full of octaves is played high up, for each fret and its share of octaves. */
    private static final double OCTAVE_HEIGHT = 0.43;

    /** The same in a lead, which has no octaves to go by, and what an open string costs there. */
    private static final double LEAD_HEIGHT = 0.05;

    private static final double LEAD_OPEN = 3;

    /** For each fret above the twelfth, where the frets are narrow. */
    private static final double BEYOND_TWELFTH = 1;

    /** For an open string: a little is gained, for it needs no finger. */
    private static final double OPEN = -1.9;

    /** For an open string, by each fret that the hand stands up the neck, up to twelve. */
    private static final double OPEN_FROM_AFAR = 0.85;

    /** For moving the hand at all, for each fret, for each fret from the fifth on, and for haste. */
    private static final double MOVE = 0.79;

    private static final double MOVE_FRET = 0.85;
    private static final double MOVE_FAR = 1.2;
    private static final double HASTE = 1.5;

    /** For each fret that a grip is wider than three. */
    private static final double STRETCH = 5.3;

    /** For more fingers than a hand has, a barre on the lowest fret counted as one. */
    private static final double FIFTH_FINGER = 1.5;

    /** For each string between those of a grip that is not struck. */
    private static final double SKIPPED_STRING = 0.68;

    /** For taking a pitch of a moment ago on another string. */
    private static final double OTHER_STRING = 2.4;

    /** For taking the same pitches in another way than the last time. */
    private static final double OTHER_GRIP = 0.18;

    /** For each fret, up to four, out of reach of a finger that was put down within the last quarter note. */
    private static final double BROKEN_SHAPE = 0.39;

    /** For striking a string that still sounds. */
    private static final double CUT_OFF = 2.6;

    /** For each fret out of reach of a finger whose note still sounds. */
    private static final double LET_GO = 4.6;

    /** For the two outer strings of a guitar, and what is gained on the third. */
    private static final double OUTER_STRING = 2;

    private static final double THIRD_STRING = -0.82;

    /** For a chord on the strings of the chord before, and further for its very shape moved along the neck: a gain. */
    private static final double SAME_STRINGS = -0.52;

    private static final double MOVED_SHAPE = -4.9;

    /** For a bend on an open string, and on a string that is wound. */
    private static final double OPEN_BEND = 30;

    private static final double WOUND_BEND = 3;

    /** For a slide, hammer-on or pull-off that leaves its string. */
    private static final double BROKEN_LEGATO = 12;

    /** In a lead, for each fret that a place lies astray. */
    private static final double ASTRAY = 1;

    private static final int FINGERS = 4;

    /** Frets within which fingers stay down. */
    private static final int REACH = 3;

    /** A quarter note, with room for rounding. */
    private static final double MOMENT = 1.01;

    /** A bar: nothing that was struck before it is held. */
    private static final double BAR = 4;

    private static final double ROUNDING = 1e-4;

    private final Comfort comfort;
    private final double height;
    private final double open;
    private final double outerString;
    private final double thirdString;
    private final double astray;

    /** For one piece of music. */
    Effort(Comfort comfort, Style style) {
        this.comfort = comfort;
        this.height = style.isLead() ? LEAD_HEIGHT : HEIGHT - OCTAVE_HEIGHT * style.octaves();
        this.open = style.isLead() ? LEAD_OPEN : OPEN;
        this.outerString = style.isLead() ? 0 : OUTER_STRING;
        this.astray = style.isLead() ? ASTRAY : 0;
        this.thirdString = style.isLead() ? 0 : THIRD_STRING;
    }

    /** What it costs to take a grip. */
    double of(Hand hand, Memory memory, Onset onset, Grip grip) {
        double cost = moving(hand, onset, grip) + stretching(grip) + remembering(memory, grip);
        for (int note = 0; note < grip.size(); note++) {
            if (grip.isPlayed(note)) {
                cost += placing(hand, onset, grip, note) + holding(hand, onset, grip, note);
                cost += playing(hand, onset.notes().get(note), grip, note);
                int last = memory.strings().get(note);
                cost += last != Grip.NO_STRING && last != grip.string(note) ? OTHER_STRING : 0;
            }
        }
        return cost;
    }

    private static double moving(Hand hand, Onset onset, Grip grip) {
        int frets = Math.abs(hand.positionFor(grip) - hand.position());
        if (frets == 0 || hand.isAtRest()) {
            return 0;
        }
        return MOVE
                + MOVE_FRET * frets
                + MOVE_FAR * Math.max(0, frets - 4)
                + HASTE * Math.min(1, frets / 4.0) / (0.5 + onset.sinceLast());
    }

    private static double stretching(Grip grip) {
        int atLowest = 0;
        int others = 0;
        int first = Integer.MAX_VALUE;
        int last = 0;
        int played = 0;
        for (int note = 0; note < grip.size(); note++) {
            if (grip.isPlayed(note)) {
                played++;
                first = Math.min(first, grip.string(note));
                last = Math.max(last, grip.string(note));
                atLowest = grip.fret(note) > 0 && grip.fret(note) == grip.lowest() ? 1 : atLowest;
                others += grip.fret(note) > grip.lowest() ? 1 : 0;
            }
        }
        double cost = STRETCH * Math.max(0, Math.min(grip.span(), 8) - 2);
        cost += others + atLowest > FINGERS ? FIFTH_FINGER : 0;
        return cost + (played > 1 ? SKIPPED_STRING * (last - first + 1 - played) : 0);
    }

    private static double remembering(Memory memory, Grip grip) {
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

    private double placing(Hand hand, Onset onset, Grip grip, int note) {
        int string = grip.string(note);
        int fret = grip.fret(note);
        double cost = height * fret + BEYOND_TWELFTH * Math.max(0, fret - 12);
        cost += fret == 0 ? open + OPEN_FROM_AFAR * Math.min(hand.position(), 12) : 0;
        cost += string == 1 || string == hand.strings() ? outerString : 0;
        cost += string == 3 ? thirdString : 0;
        boolean sounds = hand.fret(string) != Hand.SILENT && hand.end(string) > onset.time() + ROUNDING;
        return cost + (sounds && !onset.isGrace() ? CUT_OFF : 0);
    }

    /** Fingers that are still down on other strings. */
    private static double holding(Hand hand, Onset onset, Grip grip, int note) {
        int fret = grip.fret(note);
        double cost = 0;
        for (int string = 1; fret > 0 && string <= hand.strings(); string++) {
            int beyond = Math.abs(hand.fret(string) - fret) - REACH;
            double age = onset.time() - hand.struck(string);
            if (string != grip.string(note) && hand.fret(string) > 0 && beyond > 0 && age <= BAR) {
                cost += hand.end(string) > onset.time() + ROUNDING ? LET_GO * beyond : 0;
                cost += age <= MOMENT ? BROKEN_SHAPE * Math.min(beyond, 4) : 0;
            }
        }
        return cost;
    }

    private double playing(Hand hand, Note note, Grip grip, int index) {
        double cost = 0;
        if (note.bend().isPresent()) {
            cost += grip.fret(index) == 0 ? OPEN_BEND : 0;
            cost += grip.string(index) > 3 ? WOUND_BEND : 0;
        }
        boolean legato = note.attack() != Attack.PICKED && note.attack() != Attack.TAPPED;
        if (legato && !hand.isAtRest() && !hand.grip().uses(grip.string(index))) {
            cost += BROKEN_LEGATO;
        }
        return cost
                + grip.place(index)
                        .map(at -> astray * comfort.fretsAstray(note, at))
                        .orElse(0.0);
    }
}
