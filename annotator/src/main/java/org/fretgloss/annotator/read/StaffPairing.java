package org.fretgloss.annotator.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.time.Fraction;

/**
 * A notation staff and a tablature staff that show the same notes are one solo. The notation staff's element is the note;
 * the tablature staff says where it is played and how.
 */
final class StaffPairing {

    /** From the stroke on the notation staff to the one on the tablature staff. */
    private final IdentityHashMap<Stroke, Stroke> twins = new IdentityHashMap<>();

    private final Set<Stroke> shownTwice = Collections.newSetFromMap(new IdentityHashMap<>());

    private StaffPairing() {}

    /**
     * Pairs the strokes of a part's staves.
     *
     * @return the strokes with nothing shown twice; all of them if the staves show different notes, which they do where
     *     less than half of the tablature has a twin
     */
    static List<Stroke> pair(List<Stroke> strokes, Staves staves) {
        Map<Boolean, Map<Moment, List<Stroke>>> moments = strokes.stream()
                .collect(Collectors.partitioningBy(
                        stroke -> staves.isTablature(stroke.staff()), Collectors.groupingBy(Moment::of)));
        Map<Moment, List<Stroke>> notation = moments.getOrDefault(false, Map.of());
        Map<Moment, List<Stroke>> tablature = moments.getOrDefault(true, Map.of());
        StaffPairing pairing = new StaffPairing();
        tablature.forEach((moment, shown) -> pairing.match(notation.getOrDefault(moment, List.of()), shown));
        int shown = tablature.values().stream().mapToInt(List::size).sum();
        return pairing.twins.size() * 2 >= shown ? pairing.joined(strokes) : strokes;
    }

    /** By pitch, then in whatever octave, then by the order in the chord where as many are left on either side. */
    private void match(List<Stroke> notation, List<Stroke> tablature) {
        match(notation, tablature, StaffPairing::pitch);
        match(single(notation), single(tablature), StaffPairing::pitchClass);
        List<Stroke> left = single(notation);
        List<Stroke> right = single(tablature);
        if (left.size() == right.size()) {
            match(left, right, stroke -> 0);
        }
    }

    private void match(List<Stroke> notation, List<Stroke> tablature, ToIntFunction<Stroke> key) {
        Map<Integer, Deque<Stroke>> waiting = new HashMap<>();
        for (Stroke stroke : notation) {
            waiting.computeIfAbsent(key.applyAsInt(stroke), unseen -> new ArrayDeque<>())
                    .add(stroke);
        }
        for (Stroke stroke : tablature) {
            Deque<Stroke> alike = waiting.getOrDefault(key.applyAsInt(stroke), new ArrayDeque<>());
            if (!alike.isEmpty()) {
                twins.put(alike.remove(), stroke);
                shownTwice.add(stroke);
            }
        }
    }

    private List<Stroke> single(List<Stroke> strokes) {
        return strokes.stream()
                .filter(stroke -> !twins.containsKey(stroke) && !shownTwice.contains(stroke))
                .toList();
    }

    /** In order of time, as the strokes come. */
    private List<Stroke> joined(List<Stroke> strokes) {
        List<Stroke> joined = new ArrayList<>();
        Map<StringFret, Fraction> soundsUntil = new HashMap<>();
        for (Stroke stroke : strokes) {
            if (twins.containsKey(stroke)) {
                Stroke whole = stroke.withTablature(twins.get(stroke));
                whole.place().ifPresent(place -> soundsUntil.put(place, whole.end()));
                joined.add(whole);
            } else if (!shownTwice.contains(stroke) && !goesOn(stroke, soundsUntil)) {
                joined.add(stroke);
            }
        }
        return joined;
    }

    /** Tablature may repeat the fret of a note that the notation staff ties, without a tie of its own. */
    private static boolean goesOn(Stroke stroke, Map<StringFret, Fraction> soundsUntil) {
        return stroke.place()
                .filter(place -> stroke.onset().isLessThan(soundsUntil.getOrDefault(place, Fraction.ZERO)))
                .isPresent();
    }

    private static int pitch(Stroke stroke) {
        return stroke.first().pitch().map(Pitch::midi).orElse(-1);
    }

    private static int pitchClass(Stroke stroke) {
        return stroke.first().pitch().map(Pitch::chroma).orElse(-1);
    }
}
