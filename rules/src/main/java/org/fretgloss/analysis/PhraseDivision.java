package org.fretgloss.analysis;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.fretgloss.analysis.PhraseWeights.Period;

/**
 * Divides a line that goes on without a breath into phrases. Of all divisions the one is taken for which most speaks: the
 * cues at each beginning, and the lengths of the phrases, which come in periods of so many bars and like to repeat the
 * rhythm with which the one before began. The period is the line's own and found with the division.
 *
 * <p>A line whose last note begins at most {@value #ONE_BREATH} bars after its first is one phrase: what is played in one
 * breath is meant as one. Among folk melodies whose phrases were marked by their editors, nine in ten of such lines
 * between two rests are. No phrase that is found by weighing has a single moment. The effort grows with the number of
 * notes and no faster.
 */
final class PhraseDivision {

    /** A line of no more bars, from its first onset to its last, is not divided. */
    static final int ONE_BREATH = 3;

    /** No phrase lasts longer, in bars. */
    private static final int LONGEST = 8;

    private static final int FEWEST_MOMENTS = 2;

    /** However dense a line is, no phrase that is found by weighing has more moments. */
    private static final int MOST_MOMENTS = 96;

    /** So many moments make a phrase however long they last, so that every line can be divided. */
    private static final int ALWAYS_ALLOWED = 2 * FEWEST_MOMENTS - 1;

    /** Rhythms that agree for so many moments are parallel. */
    private static final int PARALLEL = 4;

    /** A length that is wrong by more, in squared doublings, speaks no more against it. */
    private static final double MOST_WRONG = 9;

    private final MelodicLine line;

    /** By period and moment: how much speaks for the best division of what lies before the moment. */
    private final double[][] best;

    /** By period and moment: where the last phrase of that division begins. */
    private final int[][] lastStart;

    private PhraseDivision(MelodicLine line) {
        this.line = line;
        this.best = new double[Period.ALL.size()][line.size() + 1];
        this.lastStart = new int[Period.ALL.size()][line.size() + 1];
    }

    /** Where the phrases of a line begin: places among the notes of the line, the first always 0. */
    static List<Integer> starts(MelodicLine line) {
        if (line.size() < 2 * FEWEST_MOMENTS || line.bars(0, line.size() - 1) <= ONE_BREATH + PhraseCues.ROUNDING) {
            return List.of(0);
        }
        PhraseDivision division = new PhraseDivision(line);
        division.weigh();
        return division.starts();
    }

    private void weigh() {
        for (double[] ofPeriod : best) {
            Arrays.fill(ofPeriod, 1, ofPeriod.length, Double.NEGATIVE_INFINITY);
        }
        PhraseCues cues = new PhraseCues(line);
        for (int end = FEWEST_MOMENTS; end <= line.size(); end++) {
            double cue = end < line.size() ? cues.at(end) : 0;
            for (int start = end - FEWEST_MOMENTS; start >= 0 && isPhrase(start, end); start--) {
                weigh(start, end, cue);
            }
        }
    }

    private boolean isPhrase(int start, int end) {
        int moments = end - start;
        return moments <= ALWAYS_ALLOWED || (moments <= MOST_MOMENTS && line.bars(start, end) <= LONGEST);
    }

    private void weigh(int start, int end, double cue) {
        double bars = line.bars(start, end);
        double beat = line.at(end - 1).beat();
        double whole = end < line.size() && PhraseCues.isWhole(bars) ? PhraseWeights.WHOLE_BARS : 0;
        double parallel = PhraseWeights.PARALLEL_RHYTHM * parallel(start, end) / PARALLEL;
        for (int period = 0; period < best.length; period++) {
            double sum = best[period][start]
                    + cue
                    + whole
                    + parallel
                    + fit(bars, Period.ALL.get(period).bars(), beat);
            if (sum > best[period][end]) {
                best[period][end] = sum;
                lastStart[period][end] = start;
            }
        }
    }

    /** How well a phrase's length suits a period: to a beat, or else the less, the further off it is. */
    private double fit(double bars, double period, double beat) {
        boolean isNear = Math.abs(bars - period) <= beat + PhraseCues.ROUNDING;
        double doublings = Math.log(bars / period) / Math.log(2);
        return (isNear ? PhraseWeights.PERIOD_TO_A_BEAT : 0)
                + PhraseWeights.OTHER_LENGTH * Math.min(MOST_WRONG, doublings * doublings);
    }

    /** For how many moments, up to {@value #PARALLEL}, the next phrase would go on in the rhythm in which this one began. */
    private int parallel(int start, int end) {
        int same = 0;
        while (same < PARALLEL
                && start + same < end
                && end + same < line.size() - 1
                && line.at(start + same).length().equals(line.at(end + same).length())) {
            same++;
        }
        return same;
    }

    private List<Integer> starts() {
        int[] way = lastStart[likeliestPeriod()];
        Deque<Integer> starts = new ArrayDeque<>();
        for (int end = line.size(); end > 0; end = way[end]) {
            starts.addFirst(line.at(way[end]).note());
        }
        return List.copyOf(starts);
    }

    private int likeliestPeriod() {
        int likeliest = 0;
        for (int period = 1; period < best.length; period++) {
            if (total(period) > total(likeliest)) {
                likeliest = period;
            }
        }
        return likeliest;
    }

    private double total(int period) {
        return best[period][line.size()] + Period.ALL.get(period).weight();
    }
}
