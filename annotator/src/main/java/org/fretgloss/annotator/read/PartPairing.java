package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fretgloss.pitch.Pitch;

/**
 * One guitar may stand in two parts, as notation and as tablature. Parts are such a pair where nearly all notes of either
 * begin in the other at the same moment and, moved by one distance, at the same pitch.
 */
final class PartPairing {

    /** Grace notes, ties and peaks of bends are not always written alike in both. */
    private static final double NEARLY_ALL = 0.9;

    private PartPairing() {}

    /** The parts in their order, with each pair read as one in the place of its notation. */
    static List<PartReading> joined(List<PartReading> parts) {
        List<PartReading> joined = new ArrayList<>(parts);
        for (PartReading tablature : parts) {
            if (tablature.isTablature()) {
                notationOf(tablature, joined).ifPresent(notation -> {
                    joined.set(joined.indexOf(notation), notation.withTablature(tablature));
                    joined.remove(tablature);
                });
            }
        }
        return joined;
    }

    /** The part that agrees best, and of equals the nearest. */
    private static Optional<PartReading> notationOf(PartReading tablature, List<PartReading> parts) {
        int place = tablature.source().place();
        return parts.stream()
                .filter(part -> part.isNotation() && mayBePair(part, tablature))
                .filter(part -> agreement(part, tablature) >= NEARLY_ALL)
                .max(Comparator.<PartReading>comparingDouble(part -> agreement(part, tablature))
                        .thenComparing(part -> -Math.abs(part.source().place() - place)));
    }

    /** Whether they count the same bars, and their programs do not say that one of them is no guitar. */
    private static boolean mayBePair(PartReading notation, PartReading tablature) {
        PartSource one = notation.source();
        PartSource other = tablature.source();
        boolean sameInstrument = one.programs().isEmpty()
                || other.programs().isEmpty()
                || one.playsGuitarOrBass() == other.playsGuitarOrBass();
        return sameInstrument && notation.countsBarsLike(tablature);
    }

    /** Share of the notes of both parts that have a twin in the other. */
    private static double agreement(PartReading notation, PartReading tablature) {
        Map<Moment, List<Integer>> written = pitches(notation);
        Map<Moment, List<Integer>> fretted = pitches(tablature);
        int distance = distance(written, fretted);
        int twins = 0;
        for (Map.Entry<Moment, List<Integer>> moment : fretted.entrySet()) {
            List<Integer> unmatched = new ArrayList<>(written.getOrDefault(moment.getKey(), List.of()));
            for (Integer pitch : moment.getValue()) {
                twins += unmatched.remove(Integer.valueOf(pitch + distance)) ? 1 : 0;
            }
        }
        int notes = notation.strokes().size() + tablature.strokes().size();
        return notes == 0 ? 0 : 2.0 * twins / notes;
    }

    /** Semitones from the tablature's pitches up to the notation's, as most notes have it. */
    private static int distance(Map<Moment, List<Integer>> written, Map<Moment, List<Integer>> fretted) {
        Map<Integer, Integer> votes = new TreeMap<>();
        fretted.forEach((moment, pitches) -> {
            List<Integer> others = written.getOrDefault(moment, List.of());
            if (others.size() == pitches.size()) {
                for (int i = 0; i < pitches.size(); i++) {
                    votes.merge(others.get(i) - pitches.get(i), 1, Integer::sum);
                }
            }
        });
        return votes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** MIDI numbers as written, rising; a note without a pitch is left out. */
    private static Map<Moment, List<Integer>> pitches(PartReading part) {
        return part.strokes().stream()
                .filter(stroke -> stroke.first().pitch().isPresent())
                .collect(Collectors.groupingBy(
                        Moment::of,
                        Collectors.collectingAndThen(
                                Collectors.toList(),
                                strokes -> strokes.stream()
                                        .flatMap(stroke -> stroke.first().pitch().stream())
                                        .map(Pitch::midi)
                                        .sorted()
                                        .toList())));
    }
}
