package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.time.Fraction;

/**
 * One stroke on a string as it is written: an element and those that it is tied to.
 *
 * @param elements in order of time, at least one
 * @param tieOpen whether the last one begins a tie that ends nowhere
 * @param place string and fret as written
 * @param marks everything that is written about its playing
 */
record Stroke(List<NoteElement> elements, boolean tieOpen, Optional<StringFret> place, Marks marks) {

    Stroke {
        elements = List.copyOf(elements);
    }

    static Stroke of(NoteElement element) {
        return new Stroke(List.of(element), false, element.place(), element.marks());
    }

    NoteElement first() {
        return elements.get(0);
    }

    Fraction onset() {
        return first().onset();
    }

    Fraction end() {
        return elements.get(elements.size() - 1).end();
    }

    /** From its first onset to its last end. */
    Fraction duration() {
        return end().minus(onset());
    }

    boolean grace() {
        return first().grace();
    }

    int staff() {
        return first().staff();
    }

    List<Integer> ordinals() {
        return elements.stream().map(NoteElement::ordinal).toList();
    }

    /** The stroke with another that only goes on with it. */
    Stroke then(Stroke continuation) {
        return new Stroke(
                Stream.concat(elements.stream(), continuation.elements.stream()).toList(),
                continuation.tieOpen,
                place,
                marks.thenOf(continuation.marks));
    }

    /** The stroke with its elements moved elsewhere. */
    Stroke mapped(UnaryOperator<NoteElement> move) {
        return new Stroke(elements.stream().map(move).toList(), tieOpen, place, marks);
    }

    Stroke withBends(List<BendStep> steps) {
        return new Stroke(elements, tieOpen, place, marks.withBends(steps));
    }

    /** The same stroke with what the tablature staff says about it. */
    Stroke withTablature(Stroke tablature) {
        return new Stroke(elements, tieOpen, tablature.place.or(() -> place), marks.togetherWith(tablature.marks));
    }
}
