package org.fretgloss.analysis;

import java.util.List;

/**
 * How much each cue speaks for a phrase beginning, in logarithms of likelihood. Fitted together, as one conditional
 * random field over whole divisions, on 700 folk melodies whose phrases were marked by their editors.
 */
final class PhraseWeights {

    /** For any note, before anything else is known: most notes begin no phrase. */
    static final double ANY_NOTE = -4.52;

    /** For a rest before it, however short. */
    static final double REST = 2.24;

    /** For each beat that this rest lasts. */
    static final double BEAT_OF_REST = 1.07;

    /** For each doubling by which the note before is longer than those around it. */
    static final double LONG_NOTE = 1.19;

    /** For a leap of an octave, smaller ones in proportion. */
    static final double LEAP = 2.70;

    /** What changes of direction take from it, where the leaps before and after go back. */
    static final double LEAP_IN_ZIGZAG = -0.16;

    /** For the pitch of the note before, struck again. */
    static final double SAME_PITCH = 1.22;

    /** For the place in the bar where the line began. */
    static final double SAME_PLACE_IN_BAR = 0.78;

    /** For a phrase that lasts a whole number of bars. */
    static final double WHOLE_BARS = 1.15;

    /** For a next phrase that begins in the rhythm in which this one began; in full for four notes. */
    static final double PARALLEL_RHYTHM = 0.63;

    /** For a phrase that is as long as the line's period, give or take a beat. */
    static final double PERIOD_TO_A_BEAT = 1.04;

    /** For each squared doubling by which a phrase is longer or shorter than the period. */
    static final double OTHER_LENGTH = -3.04;

    private PhraseWeights() {}

    /**
     * A length of phrases that a line may keep to.
     *
     * @param bars the length
     * @param weight how usual it is
     */
    record Period(double bars, double weight) {

        /** Two bars are the rule. */
        static final List<Period> ALL = List.of(
                new Period(1, -3.06),
                new Period(1.5, 0),
                new Period(2, 1.85),
                new Period(3, -0.38),
                new Period(4, 0.25));
    }
}
