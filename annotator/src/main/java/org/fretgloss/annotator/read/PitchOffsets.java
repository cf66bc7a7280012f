package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Technique;

/**
 * How far written pitches stand above fretted ones, in semitones: one answer for each staff, the one that explains most of
 * its notes. 12 is usual for a guitar; a capo that the written notes leave out makes it smaller.
 */
final class PitchOffsets {

    private static final int OCTAVE = 12;

    /** How often each offset occurs, by staff; smaller offsets first. */
    private final Map<Integer, TreeMap<Integer, Integer>> votes = new HashMap<>();

    private PitchOffsets() {}

    static PitchOffsets of(List<Stroke> strokes, Tuning tuning) {
        PitchOffsets offsets = new PitchOffsets();
        strokes.forEach(stroke -> offsets.vote(stroke, tuning));
        return offsets;
    }

    /** The offset of a staff; none if no note of it has both a pitch and a place. */
    OptionalInt of(int staff) {
        TreeMap<Integer, Integer> counts = votes.getOrDefault(staff, new TreeMap<>());
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue()
                        .thenComparing(entry -> -Math.abs(entry.getKey()))
                        .thenComparing(Map.Entry::getKey))
                .map(entry -> OptionalInt.of(entry.getKey()))
                .orElse(OptionalInt.empty());
    }

    /** How many notes the offsets explain, over all staves. */
    int explained() {
        return votes.values().stream()
                .mapToInt(counts ->
                        counts.values().stream().max(Comparator.naturalOrder()).orElse(0))
                .sum();
    }

    /** Says what was found, where it is not the plain case. */
    void tell(Notices notices) {
        votes.keySet().stream()
                .flatMapToInt(staff -> of(staff).stream())
                .filter(offset -> offset != 0)
                .forEach(offset -> notices.say(description(offset)));
    }

    private static String description(int offset) {
        if (offset == OCTAVE) {
            return "the notes are written an octave above where they sound, as is usual for guitar";
        }
        int distance = Math.abs(offset);
        return "the notes are written " + distance + (distance == 1 ? " semitone " : " semitones ")
                + (offset > 0 ? "above" : "below") + " where their frets sound";
    }

    private void vote(Stroke stroke, Tuning tuning) {
        if (stroke.marks().has(Technique.HARMONIC) || stroke.marks().has(Technique.DEAD)) {
            return;
        }
        stroke.place()
                .filter(place -> tuning.hasString(place.string()))
                .ifPresent(place -> stroke.first()
                        .pitch()
                        .ifPresent(pitch -> votes.computeIfAbsent(stroke.staff(), unseen -> new TreeMap<>())
                                .merge(pitch.midi() - tuning.midi(place), 1, Integer::sum)));
    }
}
