package org.fretgloss.solo;

import java.util.Comparator;
import java.util.List;
import org.fretgloss.time.Fraction;

/**
 * The course of a bent string on one stroke: its turning points, in semitones above the fretted pitch.
 *
 * <p>0 2 is a full bend, 0 2 0 a bend and release, 2 a pre-bend, 2 0 a pre-bend and release, 0 2 0 2 a repeated bend.
 *
 * @param heights turning points in order; at least one, none below 0, one of them above 0, no two alike in a row
 */
public record Bend(List<Fraction> heights) {

    /** Below a semitone the ear still hears the fretted pitch. */
    private static final Fraction SEMITONE = Fraction.ONE;

    private static final Fraction HALF = Fraction.of(1, 2);

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the heights are no bend
     */
    public Bend {
        heights = List.copyOf(heights);
        if (heights.stream().noneMatch(Fraction::isPositive) || heights.stream().anyMatch(Fraction::isNegative)) {
            throw new IllegalArgumentException("no bend: " + heights);
        }
        for (int i = 1; i < heights.size(); i++) {
            if (heights.get(i).equals(heights.get(i - 1))) {
                throw new IllegalArgumentException("a bend's turning points differ: " + heights);
            }
        }
    }

    /** The widest point, in semitones: ½ for a curl, 2 for a full bend. */
    public Fraction width() {
        return heights.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    /** Bent before it is struck. */
    public boolean isPreBend() {
        return heights.get(0).isPositive();
    }

    /** Let down again at the end. */
    public boolean isReleased() {
        return heights.get(heights.size() - 1).isLessThan(width());
    }

    /** Bent up, let down and bent up again on one stroke. */
    public boolean isRepeated() {
        int rises = 0;
        for (int i = 1; i < heights.size(); i++) {
            rises += heights.get(i).isMoreThan(heights.get(i - 1)) && fellBefore(i) ? 1 : 0;
        }
        return rises > 0;
    }

    private boolean fellBefore(int i) {
        return i >= 2 && heights.get(i - 1).isLessThan(heights.get(i - 2));
    }

    /** Less than a semitone: heard as the fretted pitch. */
    public boolean isCurl() {
        return width().isLessThan(SEMITONE);
    }

    /** Whole semitones by which the peak is heard above the fret; a curl gives 0. */
    public int heardSemitones() {
        return heard(width());
    }

    /** Whole semitones by which it is heard above the fret when it is struck: above 0 only for a pre-bend. */
    public int heardAtStart() {
        return heard(heights.get(0));
    }

    /** Whole semitones by which it is heard above the fret when it stops sounding. */
    public int heardAtEnd() {
        return heard(heights.get(heights.size() - 1));
    }

    /** Bent up to its peak from the fretted pitch, at some moment of the stroke. */
    public boolean risesFromFret() {
        for (int i = 1; i < heights.size(); i++) {
            if (heights.get(i).equals(width()) && heard(heights.get(i - 1)) == 0) {
                return true;
            }
        }
        return false;
    }

    /** The nearest semitone, halves upward: who bends ¾ of a tone aims at the upper note. A curl leaves the fretted pitch. */
    private static int heard(Fraction height) {
        return height.isLessThan(SEMITONE)
                ? 0
                : Math.toIntExact(height.plus(HALF).floor());
    }
}
