package org.fretgloss.annotator.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.fretgloss.time.Fraction;

/**
 * Joins tied elements into strokes. A tie leads to the element that begins where it ends, on the same string or at the
 * same written pitch, in whatever voice and whichever staff of the same sort.
 */
final class TieMerger {

    /** In time; grace notes first, as they sound. */
    private static final Comparator<NoteElement> IN_TIME =
            Comparator.comparing(NoteElement::onset).thenComparing(element -> !element.grace());

    /** What both ends of a tie have in common. */
    private record Joint(Fraction moment, boolean tablature, String tone) {}

    /** A stroke that may go on. */
    private static final class Growing {

        private final List<NoteElement> elements = new ArrayList<>();
        private boolean tieWaits;
    }

    private final Predicate<Integer> isTablature;
    private final Map<Joint, Deque<Growing>> waiting = new HashMap<>();

    private TieMerger(Predicate<Integer> isTablature) {
        this.isTablature = isTablature;
    }

    /**
     * Joins the elements of a part.
     *
     * @param isTablature which staves are tablature: a tie never leads from one to a notation staff
     * @return the strokes in order of time
     */
    static List<Stroke> merge(List<NoteElement> elements, Predicate<Integer> isTablature) {
        TieMerger merger = new TieMerger(isTablature);
        List<Growing> strokes = new ArrayList<>();
        elements.stream().sorted(IN_TIME).forEach(element -> {
            Growing stroke = merger.tiedTo(element).orElseGet(() -> {
                Growing fresh = new Growing();
                strokes.add(fresh);
                return fresh;
            });
            merger.grow(stroke, element);
        });
        return strokes.stream().map(TieMerger::stroke).toList();
    }

    private Optional<Growing> tiedTo(NoteElement element) {
        if (!element.tieStop() || element.grace()) {
            return Optional.empty();
        }
        return joints(element, element.onset())
                .flatMap(joint -> next(joint).stream())
                .findFirst();
    }

    private Optional<Growing> next(Joint joint) {
        Deque<Growing> strokes = waiting.getOrDefault(joint, new ArrayDeque<>());
        while (!strokes.isEmpty()) {
            Growing stroke = strokes.remove();
            if (stroke.tieWaits) {
                return Optional.of(stroke);
            }
        }
        return Optional.empty();
    }

    private void grow(Growing stroke, NoteElement element) {
        stroke.elements.add(element);
        stroke.tieWaits = element.tieStart() && !element.grace();
        if (stroke.tieWaits) {
            joints(element, element.end())
                    .forEach(joint -> waiting.computeIfAbsent(joint, unseen -> new ArrayDeque<>())
                            .add(stroke));
        }
    }

    /** What a tie may be known by at a moment: the string first, then the pitch. */
    private Stream<Joint> joints(NoteElement element, Fraction moment) {
        boolean tablature = isTablature.test(element.staff());
        return Stream.concat(
                        element.place().map(place -> "string " + place.string()).stream(),
                        element.pitch().map(pitch -> "pitch " + pitch.midi()).stream())
                .map(tone -> new Joint(moment, tablature, tone));
    }

    private static Stroke stroke(Growing growing) {
        NoteElement first = growing.elements.get(0);
        Marks marks = growing.elements.stream().skip(1).map(NoteElement::marks).reduce(first.marks(), Marks::thenOf);
        return new Stroke(List.copyOf(growing.elements), growing.tieWaits, first.place(), marks);
    }
}
