package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * How a part writes its bends. In the MusicXML reference a bend element is a movement of the string, negative where it is a
 * release or a pre-bend. Some programs write the height that is reached instead, 0 for a release and positive for a
 * pre-bend, and some write a held bend anew on every note that it is tied to. The bends of a staff are asked together, those
 * of its part where they do not tell, and where these do not either the reference is followed.
 *
 * @param heights whether the numbers are heights above the fret, and not movements
 * @param restates whether a bend on a tied note that is as wide as the string is bent already only repeats it
 */
record BendDialect(boolean heights, boolean restates) {

    /** A part's strokes with their bends as the reference has them, each staff read by its own dialect. */
    static List<Stroke> understood(List<Stroke> written) {
        Map<Integer, BendDialect> dialects = ofStaves(written);
        return written.stream()
                .map(stroke ->
                        Objects.requireNonNull(dialects.get(stroke.staff())).translated(stroke))
                .toList();
    }

    /** The dialect of each staff of a part. */
    static Map<Integer, BendDialect> ofStaves(List<Stroke> written) {
        int votes = votes(bent(written));
        Map<Integer, BendDialect> dialects = new TreeMap<>();
        written.stream()
                .collect(Collectors.groupingBy(Stroke::staff))
                .forEach((staff, strokes) -> dialects.put(staff, of(bent(strokes), votes)));
        return dialects;
    }

    private static BendDialect of(List<Stroke> bent, int votesOfPart) {
        int votes = votes(bent);
        boolean heights = (votes == 0 ? votesOfPart : votes) > 0;
        BendDialect restating = new BendDialect(heights, true);
        return new BendDialect(heights, bent.stream().allMatch(restating::explains));
    }

    private static List<Stroke> bent(List<Stroke> strokes) {
        return strokes.stream()
                .filter(stroke -> !stroke.marks().bends().isEmpty())
                .filter(stroke -> !stroke.marks().has(Technique.WITH_BAR))
                .toList();
    }

    private static int votes(List<Stroke> bent) {
        return bent.stream()
                .flatMap(stroke -> stroke.elements().stream())
                .map(element -> element.marks().bends())
                .mapToInt(BendDialect::votesForHeights)
                .sum();
    }

    /** A stroke whose bends are written as the reference has them. */
    private Stroke translated(Stroke stroke) {
        List<BendStep> movements = new ArrayList<>();
        Fraction height = Fraction.ZERO;
        for (int i = 0; i < stroke.elements().size(); i++) {
            height = add(stroke.elements().get(i).marks().bends(), i > 0, height, movements);
        }
        return stroke.withBends(movements);
    }

    private static int votesForHeights(List<BendStep> steps) {
        return IntStream.range(0, steps.size())
                .map(i -> voteForHeights(steps.get(i), i == 0 ? Optional.empty() : Optional.of(steps.get(i - 1))))
                .sum();
    }

    private static int voteForHeights(BendStep step, Optional<BendStep> before) {
        if (step.semitones().isNegative()) {
            return -1;
        }
        return switch (step.kind()) {
            case BEND -> 0;
            case PRE_BEND -> 1;
            case RELEASE -> {
                // Let down by as much as it was bent: a movement, though the sign is missing.
                boolean undone = before.filter(bend -> bend.semitones().abs().equals(step.semitones()))
                        .isPresent();
                yield step.semitones().isZero() ? 1 : undone ? -1 : 0;
            }
        };
    }

    /** Whether every tied note on which the string is still bent begins with the same bend, or lets it down. */
    private boolean explains(Stroke stroke) {
        List<BendStep> movements = new ArrayList<>();
        Fraction height = Fraction.ZERO;
        for (int i = 0; i < stroke.elements().size(); i++) {
            List<BendStep> steps = stroke.elements().get(i).marks().bends();
            if (i > 0 && height.isPositive() && !goesOnAt(height, steps)) {
                return false;
            }
            height = add(steps, i > 0, height, movements);
        }
        return true;
    }

    private static boolean goesOnAt(Fraction height, List<BendStep> steps) {
        return !steps.isEmpty()
                && (steps.get(0).kind() != BendStep.Kind.BEND
                        || steps.get(0).semitones().equals(height));
    }

    /** Adds an element's movements to those before it; the answer is how far the string is bent after them. */
    private Fraction add(List<BendStep> steps, boolean tied, Fraction before, List<BendStep> movements) {
        Fraction height = before;
        for (int i = 0; i < steps.size(); i++) {
            BendStep step = steps.get(i);
            Optional<BendStep> movement = Optional.of(step);
            if (movements.isEmpty()) {
                height = BendCourse.start(step);
            } else {
                movement = movement(step, height, tied && i == 0);
            }
            if (movement.isPresent()) {
                movements.add(movement.get());
                height = BendCourse.next(movement.get(), height);
            }
        }
        return height;
    }

    /** The movement that leads from a height to what is written; none where the string stays where it is. */
    private Optional<BendStep> movement(BendStep step, Fraction height, boolean firstOnTie) {
        Fraction written = step.semitones();
        if (!height.isPositive() || written.isNegative()) {
            return Optional.of(step);
        }
        return switch (step.kind()) {
            case PRE_BEND -> heights ? towards(written, height) : Optional.of(step);
            case BEND ->
                heights || (restates && firstOnTie && written.equals(height))
                        ? towards(written, height)
                        : Optional.of(step);
            case RELEASE ->
                heights && written.isPositive() && written.isLessThan(height)
                        ? towards(written, height)
                        : Optional.of(step);
        };
    }

    private static Optional<BendStep> towards(Fraction target, Fraction height) {
        if (target.equals(height)) {
            return Optional.empty();
        }
        BendStep.Kind kind = target.isLessThan(height) ? BendStep.Kind.RELEASE : BendStep.Kind.BEND;
        return Optional.of(new BendStep(target.minus(height), kind));
    }
}
