package org.fretgloss.fingering;

import org.fretgloss.neck.StringFret;

/**
 * What it costs a hand to take a grip: to move there, to stretch, to remember, and for each note the place itself, the
 * fingers that are still down, and what is done there.
 *
 * <p>The weights of all these were fitted together on tabs that people wrote for six strings, to agree with them on as
 * many places as possible. Those of leads, of which the tabs have few, were chosen on the invented solos of this project;
 * those of bends, legato and boxes are common practice without a source. They have no unit: only their proportions
 * matter.
 */
final class Effort {

    private final Placing placing;
    private final Playing playing;

    /** For one piece of music. */
    Effort(Comfort comfort, Style style) {
        this.placing = new Placing(style);
        this.playing = new Playing(comfort, style);
    }

    /**
     * What it costs to take a grip.
     *
     * @param held what the hand holds at that onset
     * @param memory what it remembers there
     */
    double of(Hand hand, Held held, Memory memory, Onset onset, Grip grip) {
        double cost = Moving.cost(hand, onset, grip) + Stretching.cost(grip) + Recalling.cost(memory, grip);
        for (int note = 0; note < grip.size(); note++) {
            if (grip.isPlayed(note)) {
                StringFret at = grip.place(note);
                cost += placing.cost(hand, grip, at)
                        + Holding.cost(held, onset, grip, note)
                        + playing.cost(hand, onset.notes().get(note), at)
                        + Recalling.cost(memory, grip, note);
            }
        }
        return cost;
    }
}
