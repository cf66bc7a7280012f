package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.StaffTuning;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bar;

/**
 * A tuning that staves declare line by line. The schema counts the lines from the bottom, so that line 1 is the lowest
 * string; some programs count from the top. The order in which more notes agree with their written pitches is taken.
 */
final class DeclaredTuning {

    static final int MOST_STRINGS = 12;

    private final Unread unread;
    private final Notices notices;

    /**
     * Reads such tunings.
     *
     * @param unread numbers that cannot be used; a tuning with one of them is passed over
     */
    DeclaredTuning(Unread unread, Notices notices) {
        this.unread = unread;
        this.notices = notices;
    }

    /**
     * The tuning, without any capo; none if no staff declares a whole one.
     *
     * @param staves what the part's staves declare at one moment
     * @param strokes the notes for which it holds
     * @param bar where they declare it
     */
    Optional<Tuning> of(List<StaffDetails> staves, List<Stroke> strokes, Bar bar) {
        return staves.stream()
                .filter(staff -> !staff.getStaffTuning().isEmpty())
                .flatMap(staff -> candidates(staff, bar))
                .max(Comparator.<Tuning>comparingInt(candidate ->
                                PitchOffsets.of(strokes, Tunings.of(candidate)).explained())
                        .thenComparing(DeclaredTuning::highestFirst));
    }

    private Stream<Tuning> candidates(StaffDetails staff, Bar bar) {
        if (staff.getStaffTuning().stream().anyMatch(unread::marks)) {
            return Stream.empty();
        }
        SortedMap<Integer, Pitch> lines = new TreeMap<>();
        for (StaffTuning written : staff.getStaffTuning()) {
            OptionalInt line = Numbers.whole(written.getLine());
            pitch(written).filter(open -> line.isPresent()).ifPresent(open -> lines.put(line.getAsInt(), open));
        }
        List<Integer> missing = IntStream.rangeClosed(1, lines.isEmpty() ? 1 : lines.lastKey())
                .filter(line -> !lines.containsKey(line))
                .boxed()
                .toList();
        if (!missing.isEmpty()) {
            notices.say(
                    "incomplete tuning",
                    "the tuning in the score says nothing of " + lines(missing) + ", so it is passed over",
                    bar.number());
            return Stream.empty();
        }
        List<Pitch> fromBottom = List.copyOf(lines.values());
        List<Pitch> fromTop = new ArrayList<>(fromBottom);
        Collections.reverse(fromTop);
        return Stream.of(new Tuning(fromTop, 0), new Tuning(fromBottom, 0));
    }

    private static String lines(List<Integer> numbers) {
        return (numbers.size() == 1 ? "line " : "lines ")
                + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static Optional<Pitch> pitch(StaffTuning written) {
        return WrittenPitch.name(written.getTuningStep(), Numbers.alteration(written.getTuningAlter()))
                .flatMap(name -> WrittenPitch.inOctave(name, written.getTuningOctave()));
    }

    private static boolean highestFirst(Tuning tuning) {
        return tuning.strings().get(0).midi()
                >= tuning.strings().get(tuning.size() - 1).midi();
    }
}
