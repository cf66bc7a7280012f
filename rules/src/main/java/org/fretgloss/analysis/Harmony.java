package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.time.Fraction;

/**
 * The chord of each moment.
 *
 * @param source where the chords come from
 * @param spans in order, without gaps or overlaps; none where there are no chords
 */
public record Harmony(Source source, List<ChordSpan> spans) {

    /** Where chords come from. */
    public enum Source {
        /** The score's chord symbols. */
        SCORE,
        /** A progression or form that the user gave. */
        GIVEN,
        /** The notes of an accompanying part, which only suggest them. */
        INFERRED,
        /** Nowhere: marks that need a chord are left out. */
        NONE
    }

    public static final Harmony UNKNOWN = new Harmony(Source.NONE, List.of());

    public Harmony {
        spans = List.copyOf(spans);
    }

    public boolean isKnown() {
        return source != Source.NONE;
    }

    /** The chord in force at a moment. */
    public Optional<ChordSymbol> chordAt(Fraction moment) {
        return spanAt(moment).flatMap(ChordSpan::chord);
    }

    /** The chords from one moment to another. */
    Harmony between(Fraction start, Fraction end) {
        List<ChordSpan> within = spans.subList(firstEndingAfter(start), spans.size()).stream()
                .takeWhile(span -> span.start().isLessThan(end))
                .map(span -> new ChordSpan(span.start().max(start), span.end().min(end), span.chord()))
                .toList();
        return new Harmony(source, within);
    }

    /** Whether one chord, or the want of one, lasts from a moment to another. */
    public boolean isSameChord(Fraction earlier, Fraction later) {
        return spanAt(earlier).equals(spanAt(later));
    }

    /** The stretch that a moment falls in. */
    public Optional<ChordSpan> spanAt(Fraction moment) {
        int place = firstEndingAfter(moment);
        return place < spans.size() && !moment.isLessThan(spans.get(place).start())
                ? Optional.of(spans.get(place))
                : Optional.empty();
    }

    /** The stretch before one of these. */
    Optional<ChordSpan> spanBefore(ChordSpan span) {
        int place = firstEndingAfter(span.start());
        return place == 0 ? Optional.empty() : Optional.of(spans.get(place - 1));
    }

    private int firstEndingAfter(Fraction moment) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (spans.get(middle).end().isMoreThan(moment)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
