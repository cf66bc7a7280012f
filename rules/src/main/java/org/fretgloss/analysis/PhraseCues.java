package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.analysis.MelodicLine.Moment;

/**
 * What speaks for a phrase beginning at a moment of a line, from the moments around it: a rest, a long note before it, a
 * leap, a change of direction, a repeated pitch, and that it stands in the bar where the line began. Each is weighted by
 * {@link PhraseWeights} and they add up.
 */
final class PhraseCues {

    /** Differences of onsets below this, in bars, are rounding. */
    static final double ROUNDING = 1e-4;

    /** How many moments on each side a note's length is compared with. */
    private static final int AROUND = 8;

    /** A note longer than its surroundings by more doublings than this says no more. */
    private static final double MOST_DOUBLINGS = 2;

    /** A rest that lasts more beats than this says no more. */
    private static final double MOST_BEATS = 2;

    private static final double OCTAVE = 12;

    private final MelodicLine line;

    /** By moment: the lengths before it, in doublings, added up. */
    private final List<Double> lengthsBefore = new ArrayList<>();

    PhraseCues(MelodicLine line) {
        this.line = line;
        double sum = 0;
        lengthsBefore.add(sum);
        for (Moment moment : line.moments()) {
            sum += moment.octavesOfLength();
            lengthsBefore.add(sum);
        }
    }

    /** Whether a stretch of bars, up to rounding, is as long as another. */
    static boolean isSame(double bars, double others) {
        return Math.abs(bars - others) < ROUNDING;
    }

    /** Whether it is a whole number of bars. */
    static boolean isWhole(double bars) {
        return isSame(bars, Math.rint(bars));
    }

    /**
     * What speaks for it, above 0, or against it, below 0.
     *
     * @param moment not the first
     */
    double at(int moment) {
        return PhraseWeights.ANY_NOTE
                + rest(moment)
                + PhraseWeights.LONG_NOTE * longNote(moment)
                + leap(moment)
                + (line.step(moment - 1) == 0 ? PhraseWeights.SAME_PITCH : 0)
                + (isWhole(line.bars(0, moment)) ? PhraseWeights.SAME_PLACE_IN_BAR : 0);
    }

    private double rest(int moment) {
        double rest = line.at(moment).onset() - line.at(moment - 1).end();
        if (rest < ROUNDING) {
            return 0;
        }
        double beats = rest / line.at(moment - 1).beat();
        return PhraseWeights.REST + PhraseWeights.BEAT_OF_REST * Math.min(MOST_BEATS, beats);
    }

    /** By how many doublings the note before is longer than those around it, the rest after it included. */
    private double longNote(int moment) {
        int before = moment - 1;
        int from = Math.max(0, before - AROUND);
        int to = Math.min(line.size(), before + AROUND + 1);
        double own = line.at(before).octavesOfLength();
        double others = lengthsBefore.get(to) - lengthsBefore.get(from) - own;
        double doublings = own - others / Math.max(1, to - from - 1);
        return Math.max(-MOST_DOUBLINGS, Math.min(MOST_DOUBLINGS, doublings));
    }

    /** The leap into the moment, in octaves; less where the line zigzags and every leap is turned back from. */
    private double leap(int moment) {
        double octaves = Math.min(OCTAVE, Math.abs(line.step(moment - 1))) / OCTAVE;
        return octaves * (PhraseWeights.LEAP + (isZigzag(moment) ? PhraseWeights.LEAP_IN_ZIGZAG : 0));
    }

    private boolean isZigzag(int moment) {
        if (moment < 2 || moment + 1 == line.size()) {
            return false;
        }
        int direction = Integer.signum(line.step(moment - 1));
        return direction != 0
                && Integer.signum(line.step(moment - 2)) == -direction
                && Integer.signum(line.step(moment)) == -direction;
    }
}
