package org.fretgloss.annotator.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Note;
import org.fretgloss.time.Fraction;

/**
 * How many duration units make a quarter note as long as a part does not say so: what most of its notes up to there say by
 * their printed values, or one.
 */
final class UndeclaredDivisions {

    private UndeclaredDivisions() {}

    static Fraction of(PartSource part) {
        Map<Fraction, Integer> votes = new LinkedHashMap<>();
        part.measures().stream()
                .flatMap(measure -> measure.getNoteOrBackupOrForward().stream())
                .takeWhile(item -> !(item instanceof Attributes declared) || declared.getDivisions() == null)
                .flatMap(item -> item instanceof Note note ? Stream.of(note) : Stream.of())
                .flatMap(note -> vote(note).stream())
                .forEach(divisions -> votes.merge(divisions, 1, Integer::sum));
        // Of equally many the first.
        return votes.entrySet().stream()
                .reduce((most, next) -> next.getValue() > most.getValue() ? next : most)
                .map(Map.Entry::getKey)
                .orElse(Fraction.ONE);
    }

    private static Optional<Fraction> vote(Note note) {
        if (note.getGrace() != null || OpenBar.isWholeBarRest(note)) {
            return Optional.empty();
        }
        return Numbers.fraction(note.getDuration())
                .filter(Fraction::isPositive)
                .flatMap(duration -> Lengths.printed(note).map(duration::dividedBy));
    }
}
