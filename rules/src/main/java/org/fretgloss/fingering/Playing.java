package org.fretgloss.fingering;

import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/** What a place costs for what is done there. Common practice, no source: the tabs have hardly any of it. */
final class Playing {

    /** For a bend on an open string, and on a string that is wound. */
    private static final double OPEN_BEND = 30;

    private static final double WOUND_BEND = 3;

    /** The thickest string of a guitar that is plain. */
    private static final int LAST_PLAIN = 3;

    /** For a slide, hammer-on or pull-off that leaves its string. */
    private static final double BROKEN_LEGATO = 12;

    /** In a lead, for each fret that a place lies astray. */
    private static final double ASTRAY = 1;

    private final Comfort comfort;
    private final double astray;

    Playing(Comfort comfort, Style style) {
        this.comfort = comfort;
        this.astray = style.isLead() ? ASTRAY : 0;
    }

    double cost(Hand hand, Note note, StringFret at) {
        return bending(note, at) + leaving(hand, note, at) + astray * comfort.fretsAstray(note, at);
    }

    private static double bending(Note note, StringFret at) {
        if (note.bend().isEmpty()) {
            return 0;
        }
        return (at.isOpen() ? OPEN_BEND : 0) + (at.string() > LAST_PLAIN ? WOUND_BEND : 0);
    }

    private static double leaving(Hand hand, Note note, StringFret at) {
        boolean legato = note.attack() != Attack.PICKED && note.attack() != Attack.TAPPED;
        return legato && !hand.isAtRest() && !hand.grip().uses(at.string()) ? BROKEN_LEGATO : 0;
    }
}
