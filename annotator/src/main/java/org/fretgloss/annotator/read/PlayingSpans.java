package org.fretgloss.annotator.read;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Bracket;
import org.audiveris.proxymusic.Dashes;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.StartStopContinue;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * Words over the staff that hold for a stretch of notes ("P.M. - - -"): to the end of their dashes, or without dashes for
 * the notes of their moment.
 */
final class PlayingSpans {

    /** For each technique, by the moment it is written at, the end of its dashes; its own moment if it has none. */
    private final Map<Technique, NavigableMap<Fraction, Fraction>> spans = new EnumMap<>(Technique.class);

    private Optional<Technique> latest = Optional.empty();

    private PlayingSpans() {}

    static PlayingSpans of(Timeline part, List<Bar> bars) {
        PlayingSpans found = new PlayingSpans();
        part.directions()
                .forEach(placed -> found.take(
                        placed.item().getDirectionType(),
                        bars.get(placed.bar()).start().plus(placed.at())));
        return found;
    }

    /** The techniques that hold at a moment. */
    Set<Technique> at(Fraction moment) {
        Set<Technique> held = EnumSet.noneOf(Technique.class);
        spans.forEach((technique, ends) -> {
            Map.Entry<Fraction, Fraction> span = ends.floorEntry(moment);
            if (span != null && (span.getKey().equals(moment) || moment.isLessThan(span.getValue()))) {
                held.add(technique);
            }
        });
        return held;
    }

    private void take(List<DirectionType> types, Fraction moment) {
        words(types).forEach(technique -> {
            spans.computeIfAbsent(technique, unseen -> new TreeMap<>()).put(moment, moment);
            latest = Optional.of(technique);
        });
        if (types.stream().anyMatch(PlayingSpans::stops)) {
            latest.map(spans::get).ifPresent(ends -> ends.put(ends.lastKey(), moment));
            latest = Optional.empty();
        }
    }

    private static Stream<Technique> words(List<DirectionType> types) {
        return types.stream()
                .flatMap(type -> type.getWordsOrSymbol().stream())
                .filter(FormattedTextId.class::isInstance)
                .map(item -> PlayingWords.technique(((FormattedTextId) item).getValue()))
                .flatMap(Optional::stream);
    }

    private static boolean stops(DirectionType type) {
        Dashes dashes = type.getDashes();
        Bracket bracket = type.getBracket();
        return (dashes != null && dashes.getType() == StartStopContinue.STOP)
                || (bracket != null && bracket.getType() == StartStopContinue.STOP);
    }
}
