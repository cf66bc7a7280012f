package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Technique;

/**
 * How far written pitches stand above fretted ones, in semitones: one answer for each staff, the one that explains most of
 * its notes. 12 is usual for a guitar; a capo that the written notes leave out makes it smaller.
 */
final class PitchOffsets {

    private static final int OCTAVE = 12;

    /** How often each offset occurs, by staff; smaller offsets first. */
    private final Map<Integer, SortedMap<Integer, Integer>> votes = new HashMap<>();

    /** The votes of bent notes among them. */
    private final Map<Integer, Map<Integer, Integer>> bent = new HashMap<>();

    /** What offset each staff declares by its transposition. */
    private final Map<Integer, Integer> declared = new HashMap<>();

    private PitchOffsets() {}

    static PitchOffsets of(List<Stroke> strokes, Tunings tunings) {
        PitchOffsets offsets = new PitchOffsets();
        strokes.forEach(stroke -> offsets.vote(stroke, tunings));
        return offsets;
    }

    /** The offset of a staff; none if no note of it has both a pitch and a place. */
    OptionalInt of(int staff) {
        return Optional.ofNullable(votes.get(staff))
                .map(PitchOffsets::mostCommon)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** How many notes the offsets explain, over all staves. */
    int explained() {
        return votes.values().stream()
                .mapToInt(counts ->
                        counts.values().stream().max(Comparator.naturalOrder()).orElse(0))
                .sum();
    }

    /** How many notes have both a pitch and a place, but for those that are written at the peak of a bend. */
    int asked() {
        return votes.entrySet().stream()
                .mapToInt(staff -> sum(staff.getValue()) - peaks(staff.getKey()))
                .sum();
    }

    private int unbentExplained() {
        int bentExplained = bent.entrySet().stream()
                .mapToInt(staff ->
                        staff.getValue().getOrDefault(of(staff.getKey()).orElse(0), 0))
                .sum();
        return explained() - bentExplained;
    }

    private int peaks(int staff) {
        Map<Integer, Integer> counts = bent.getOrDefault(staff, Map.of());
        return sum(counts) - counts.getOrDefault(of(staff).orElse(0), 0);
    }

    private static int sum(Map<Integer, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether no staff stands off by anything but octaves, or what it declares. */
    boolean arePlain() {
        return votes.keySet().stream().allMatch(this::isPlain);
    }

    /**
     * The offset that holds throughout the part and that neither octaves nor a declared transposition explain.
     *
     * @param atLeast how many unbent notes must tell it
     * @param share how many of all notes must agree, from 0 to 1
     */
    OptionalInt unexplained(int atLeast, double share) {
        int asked = asked();
        boolean oneRemainder = votes.values().stream()
                        .map(counts -> Math.floorMod(mostCommon(counts), OCTAVE))
                        .distinct()
                        .count()
                == 1;
        if (unbentExplained() < atLeast || explained() < share * asked || !oneRemainder || arePlain()) {
            return OptionalInt.empty();
        }
        return votes.values().stream().mapToInt(PitchOffsets::mostCommon).min();
    }

    /** Says what was found, where it is not the plain case. */
    void tell(Notices notices) {
        votes.keySet().stream()
                .flatMapToInt(staff -> of(staff).stream())
                .filter(offset -> offset != 0)
                .forEach(offset -> notices.say(description(offset)));
    }

    private boolean isPlain(int staff) {
        int offset = of(staff).orElse(0);
        return offset % OCTAVE == 0 || (offset - declared.getOrDefault(staff, 0)) % OCTAVE == 0;
    }

    /** Of as many votes, the one nearest to none. */
    private static int mostCommon(SortedMap<Integer, Integer> counts) {
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue()
                        .thenComparing(entry -> -Math.abs(entry.getKey()))
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static String description(int offset) {
        if (offset == OCTAVE) {
            return "the notes are written an octave above where they sound, as is usual for guitar";
        }
        int distance = Math.abs(offset);
        return "the notes are written " + distance + (distance == 1 ? " semitone " : " semitones ")
                + (offset > 0 ? "above" : "below") + " where their frets sound";
    }

    private void vote(Stroke stroke, Tunings tunings) {
        if (stroke.marks().has(Technique.HARMONIC) || stroke.marks().has(Technique.DEAD)) {
            return;
        }
        Optional<Pitch> written = stroke.first().pitch();
        OptionalInt fretted = stroke.place().stream()
                .filter(place -> tunings.at(stroke.onset()).hasString(place.string()))
                .mapToInt(place -> tunings.at(stroke.onset()).midi(place))
                .findFirst();
        if (written.isPresent() && fretted.isPresent()) {
            int offset = written.get().midi() - fretted.getAsInt();
            votes.computeIfAbsent(stroke.staff(), unseen -> new TreeMap<>()).merge(offset, 1, Integer::sum);
            if (!stroke.marks().bends().isEmpty()) {
                bent.computeIfAbsent(stroke.staff(), unseen -> new HashMap<>()).merge(offset, 1, Integer::sum);
            }
            declared.putIfAbsent(stroke.staff(), -stroke.first().transposition());
        }
    }
}
