package org.fretgloss.annotator.read;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * What is written about the playing of a note.
 *
 * @param techniques marks that stand for themselves
 * @param bends bends of the string, in order
 * @param bendText semitones of a bend whose width is only written as a text
 * @param begins marks that begin on the note
 * @param ends marks that end on it
 * @param tapped whether it is tapped
 * @param harmonic which pitch of a harmonic it writes, if it is one
 */
record Marks(
        Set<Technique> techniques,
        List<BendStep> bends,
        Optional<Fraction> bendText,
        Set<Link> begins,
        Set<Link> ends,
        boolean tapped,
        Optional<HarmonicTone> harmonic) {

    Marks {
        techniques = Set.copyOf(techniques);
        bends = List.copyOf(bends);
        begins = Set.copyOf(begins);
        ends = Set.copyOf(ends);
    }

    /** Marks of this note and of the one that it is tied to. */
    Marks thenOf(Marks continuation) {
        return with(
                continuation,
                Stream.concat(bends.stream(), continuation.bends.stream()).toList());
    }

    /** Marks of this note and of the same note on the tablature staff; what stands on both counts once. */
    Marks togetherWith(Marks tablature) {
        return with(tablature, tablature.bends.isEmpty() ? bends : tablature.bends);
    }

    Marks and(Technique technique) {
        return new Marks(union(techniques, Set.of(technique)), bends, bendText, begins, ends, tapped, harmonic);
    }

    Marks withBends(List<BendStep> steps) {
        return new Marks(techniques, steps, bendText, begins, ends, tapped, harmonic);
    }

    boolean has(Technique technique) {
        return techniques.contains(technique);
    }

    boolean beginsLegato() {
        return begins.stream().anyMatch(Link::isLegato);
    }

    boolean endsLegato() {
        return ends.stream().anyMatch(Link::isLegato);
    }

    /** How many marks of a soloist's hands there are; a muted or let-ring chord part has few. */
    long count() {
        long joins = begins.stream()
                .filter(link -> link.isLegato() || link == Link.SLIDE)
                .count();
        return bends.size() + joins + (tapped ? 1 : 0) + (has(Technique.VIBRATO) ? 1 : 0);
    }

    private Marks with(Marks other, List<BendStep> allBends) {
        return new Marks(
                union(techniques, other.techniques),
                allBends,
                bendText.or(other::bendText),
                union(begins, other.begins),
                union(ends, other.ends),
                tapped || other.tapped,
                harmonic.or(other::harmonic));
    }

    private static <E extends Enum<E>> Set<E> union(Set<E> first, Set<E> second) {
        if (second.isEmpty()) {
            return first;
        }
        EnumSet<E> both = EnumSet.copyOf(second);
        both.addAll(first);
        return both;
    }
}
