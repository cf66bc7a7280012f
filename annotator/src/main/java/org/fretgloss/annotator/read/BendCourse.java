package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;

/**
 * From a note's bend elements to the turning points of one bend. The MusicXML reference defines bend-alter as the number of
 * steps of the movement itself, so that the release of a full bend is −2 and not 0, and lets pre-bends be negative.
 */
final class BendCourse {

    /** No finger bends a string further than an octave. */
    private static final Fraction WIDEST = Fraction.of(12);

    private BendCourse() {}

    /** The bend; none where nothing moves upward, or further than a string can. */
    static Optional<Bend> of(List<BendStep> steps) {
        List<Fraction> heights = new ArrayList<>();
        for (BendStep step : steps) {
            if (heights.isEmpty()) {
                heights.add(start(step));
            }
            heights.add(next(step, heights.get(heights.size() - 1)));
        }
        List<Fraction> turns = turns(heights);
        return turns.stream().anyMatch(Fraction::isPositive)
                        && turns.stream().noneMatch(height -> height.isMoreThan(WIDEST))
                ? Optional.of(new Bend(turns))
                : Optional.empty();
    }

    /** Where the string is when the note is struck. A note that begins with a release was bent before, as by another. */
    static Fraction start(BendStep first) {
        return first.kind() == BendStep.Kind.BEND
                ? Fraction.ZERO
                : first.semitones().abs();
    }

    /** Where a movement leads from a height. */
    static Fraction next(BendStep step, Fraction height) {
        return switch (step.kind()) {
            case BEND -> height.plus(step.semitones());
            // The width of a pre-bend is where the note starts; one in mid-course moves as its sign says.
            case PRE_BEND -> height.equals(step.semitones().abs()) ? height : height.plus(step.semitones());
            // Some programs write where a release leads to, which is 0, and not how far it goes.
            case RELEASE ->
                step.semitones().isZero()
                        ? Fraction.ZERO
                        : height.minus(step.semitones().abs());
        };
    }

    /** A string cannot go below its fret; staying where it is is no turn. */
    private static List<Fraction> turns(List<Fraction> heights) {
        List<Fraction> turns = new ArrayList<>();
        for (Fraction height : heights) {
            Fraction above = height.max(Fraction.ZERO);
            if (turns.isEmpty() || !turns.get(turns.size() - 1).equals(above)) {
                turns.add(above);
            }
        }
        return turns;
    }
}
