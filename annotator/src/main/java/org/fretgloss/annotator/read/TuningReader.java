package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.StaffTuning;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;

/**
 * How the instrument is tuned. The schema counts staff lines from the bottom, so that line 1 is the lowest string; some
 * programs count from the top. The order in which more notes agree with their written pitches is taken.
 */
final class TuningReader {

    private static final int HIGHEST_CAPO = 24;
    private static final int MOST_STRINGS = 12;

    private TuningReader() {}

    static Tuning read(Staves staves, List<Stroke> strokes, Notices notices) {
        Tuning tuning = staves.tunings().stream()
                .flatMap(details -> candidates(details, notices))
                .max(Comparator.<Tuning>comparingInt(
                                candidate -> PitchOffsets.of(strokes, candidate).explained())
                        .thenComparing(TuningReader::highestFirst))
                .orElseGet(() -> undeclared(staves, strokes, notices));
        int capo = staves.capo().orElse(0);
        if (capo < 0 || capo > HIGHEST_CAPO) {
            notices.say("a capo on fret " + capo + " cannot be, so the score is read without one");
            capo = 0;
        }
        return tuning.withCapo(capo);
    }

    private static Stream<Tuning> candidates(StaffDetails details, Notices notices) {
        SortedMap<Integer, Pitch> lines = new TreeMap<>();
        for (StaffTuning written : details.getStaffTuning()) {
            OptionalInt line = Numbers.whole(written.getLine());
            pitch(written).filter(open -> line.isPresent()).ifPresent(open -> lines.put(line.getAsInt(), open));
        }
        if (lines.isEmpty()
                || lines.firstKey() != 1
                || lines.lastKey() != lines.size()
                || lines.size() > MOST_STRINGS) {
            notices.say("the tuning in the score is incomplete, so standard tuning is taken");
            return Stream.empty();
        }
        List<Pitch> fromBottom = List.copyOf(lines.values());
        List<Pitch> fromTop = new ArrayList<>(fromBottom);
        Collections.reverse(fromTop);
        return Stream.of(new Tuning(fromTop, 0), new Tuning(fromBottom, 0));
    }

    private static Optional<Pitch> pitch(StaffTuning written) {
        return WrittenPitch.name(written.getTuningStep(), Numbers.alteration(written.getTuningAlter()))
                .flatMap(name -> WrittenPitch.inOctave(name, written.getTuningOctave()));
    }

    private static boolean highestFirst(Tuning tuning) {
        return tuning.strings().get(0).midi()
                >= tuning.strings().get(tuning.size() - 1).midi();
    }

    private static Tuning undeclared(Staves staves, List<Stroke> strokes, Notices notices) {
        List<Integer> used = strokes.stream()
                .flatMap(stroke -> stroke.place().stream())
                .map(StringFret::string)
                .toList();
        int strings = Math.max(
                staves.tablatureLines().orElse(Tuning.STANDARD.size()),
                used.stream().max(Comparator.naturalOrder()).orElse(0));
        Tuning tuning = StandardTunings.of(strings);
        if (!used.isEmpty()) {
            notices.say(
                    "the score does not say how the strings are tuned, so standard tuning is taken: " + names(tuning));
        }
        return tuning;
    }

    /** Lowest string first, as players say it. */
    private static String names(Tuning tuning) {
        List<Pitch> strings = new ArrayList<>(tuning.strings());
        Collections.reverse(strings);
        return String.join(
                " ", strings.stream().map(Pitch::name).map(PitchClass::toString).toList());
    }
}
