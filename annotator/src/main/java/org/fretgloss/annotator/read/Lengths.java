package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.TimeModification;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/** How long things last, in quarter notes. */
final class Lengths {

    /** Note values by name from the longest, each half of the one before; the first is eight whole notes. */
    static final List<String> TYPES = List.of(
            "maxima", "long", "breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th", "256th",
            "512th", "1024th");

    private static final Fraction MAXIMA = Fraction.of(32);

    private Lengths() {}

    /** A duration as the file counts it; 0 if it is absent, negative or absurd. */
    static Fraction of(@Nullable BigDecimal duration, Fraction divisions) {
        return Numbers.fraction(duration)
                .filter(length -> !length.isNegative())
                .map(length -> length.dividedBy(divisions))
                .orElse(Fraction.ZERO);
    }

    /** The length that a note's printed value stands for, dots and tuplet included; none if no value is printed. */
    static Optional<Fraction> printed(Note note) {
        if (note.getType() == null) {
            return Optional.empty();
        }
        return ofType(note.getType().getValue(), note.getDot().size())
                .map(length -> length.times(tuplet(note.getTimeModification())));
    }

    /** The length of a note value: "eighth" with one dot gives ¾. */
    static Optional<Fraction> ofType(@Nullable String type, int dots) {
        int place = type == null ? -1 : TYPES.indexOf(type.strip());
        if (place < 0) {
            return Optional.empty();
        }
        int counted = Math.min(dots, 8);
        Fraction dotted = Fraction.of((2L << counted) - 1, 1L << counted);
        return Optional.of(MAXIMA.times(Fraction.of(1, 1L << place)).times(dotted));
    }

    private static Fraction tuplet(@Nullable TimeModification modification) {
        if (modification == null) {
            return Fraction.ONE;
        }
        int actual = Numbers.whole(modification.getActualNotes()).orElse(1);
        int normal = Numbers.whole(modification.getNormalNotes()).orElse(1);
        return actual < 1 || normal < 1 ? Fraction.ONE : Fraction.of(normal, actual);
    }
}
