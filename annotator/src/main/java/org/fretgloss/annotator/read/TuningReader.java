package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.audiveris.proxymusic.StaffDetails;
import org.audiveris.proxymusic.StaffTuning;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;

/**
 * How the instrument is tuned, from the beginning and where it is retuned later. The schema counts staff lines from the
 * bottom, so that line 1 is the lowest string; some programs count from the top. The order in which more notes agree with
 * their written pitches is taken.
 */
final class TuningReader {

    private static final int HIGHEST_CAPO = 24;
    private static final int MOST_STRINGS = 12;

    private final List<Bar> bars;
    private final List<Stroke> strokes;
    private final Notices notices;

    /** What the staves declare, by the moment. */
    private final NavigableMap<Fraction, List<StaffDetails>> declared = new TreeMap<>();

    private TuningReader(List<Bar> bars, List<Stroke> strokes, Notices notices) {
        this.bars = bars;
        this.strokes = strokes;
        this.notices = notices;
    }

    static Tunings read(Staves staves, List<Bar> bars, List<Stroke> strokes, Notices notices) {
        TuningReader reader = new TuningReader(bars, strokes, notices);
        staves.details().forEach(reader::declare);
        return reader.read(staves.tablatureLines());
    }

    /** What stands before the first note holds from the beginning. */
    private void declare(Placed<StaffDetails> placed) {
        Fraction first = strokes.stream().map(Stroke::onset).findFirst().orElse(Fraction.ZERO);
        Fraction moment = bars.get(placed.bar()).start().plus(placed.at());
        declared.computeIfAbsent(moment.isMoreThan(first) ? moment : Fraction.ZERO, unseen -> new ArrayList<>())
                .add(placed.item());
    }

    private Tunings read(OptionalInt lines) {
        NavigableMap<Fraction, Tuning> tunings = new TreeMap<>();
        int capo = capoAt(Fraction.ZERO).orElse(0);
        Optional<Tuning> written = declared.keySet().stream()
                .flatMap(moment -> tuningAt(moment).stream())
                .findFirst();
        Tuning tuning = written.map(strings -> strings.withCapo(capo))
                .orElseGet(
                        () -> UndeclaredTuning.of(lines, capo, strokes, notices).withCapo(capo));
        tunings.put(Fraction.ZERO, tuning);
        for (Fraction moment : declared.tailMap(Fraction.ZERO, false).keySet()) {
            Tuning before = tuning;
            int fret = capoAt(moment).orElse(before.capo());
            tuning = tuningAt(moment).orElse(before).withCapo(fret);
            if (!tuning.equals(before)) {
                tunings.put(moment, tuning);
                tell(before, tuning, moment);
            }
        }
        boolean capoIsSaid =
                declared.values().stream().flatMap(List::stream).anyMatch(details -> details.getCapo() != null);
        Tunings read = new Tunings(tunings);
        return capoIsSaid || !read.stayTheSame()
                ? read
                : Tunings.of(TuningShift.shown(read.first(), PitchOffsets.of(strokes, read), notices));
    }

    private void tell(Tuning before, Tuning after, Fraction moment) {
        String bar = bars.stream()
                .filter(candidate -> candidate.end().isMoreThan(moment))
                .findFirst()
                .map(Bar::number)
                .orElse("");
        if (!before.strings().equals(after.strings())) {
            notices.say("the strings are retuned; boxes are counted in the tuning at the beginning", bar);
        }
        if (before.capo() != after.capo()) {
            notices.say(after.capo() == 0 ? "the capo is taken off" : "a capo is put on fret " + after.capo(), bar);
        }
    }

    private OptionalInt capoAt(Fraction moment) {
        OptionalInt fret = declared.getOrDefault(moment, List.of()).stream()
                .flatMapToInt(details -> Numbers.whole(details.getCapo()).stream())
                .findFirst();
        if (fret.isPresent() && (fret.getAsInt() < 0 || fret.getAsInt() > HIGHEST_CAPO)) {
            notices.say("a capo on fret " + fret.getAsInt() + " cannot be, so the score is read without one");
            return OptionalInt.empty();
        }
        return fret;
    }

    /** Of the tunings that the staves declare at a moment the one that explains most of the notes up to the next. */
    private Optional<Tuning> tuningAt(Fraction moment) {
        Fraction next = Optional.ofNullable(declared.higherKey(moment))
                .orElse(bars.get(bars.size() - 1).end());
        List<Stroke> meant = strokes.stream()
                .filter(stroke ->
                        !stroke.onset().isLessThan(moment) && stroke.onset().isLessThan(next))
                .toList();
        return declared.getOrDefault(moment, List.of()).stream()
                .filter(details -> !details.getStaffTuning().isEmpty())
                .flatMap(this::candidates)
                .max(Comparator.<Tuning>comparingInt(candidate ->
                                PitchOffsets.of(meant, Tunings.of(candidate)).explained())
                        .thenComparing(TuningReader::highestFirst));
    }

    private Stream<Tuning> candidates(StaffDetails details) {
        SortedMap<Integer, Pitch> lines = new TreeMap<>();
        for (StaffTuning written : details.getStaffTuning()) {
            OptionalInt line = Numbers.whole(written.getLine());
            pitch(written).filter(open -> line.isPresent()).ifPresent(open -> lines.put(line.getAsInt(), open));
        }
        if (lines.isEmpty()
                || lines.firstKey() != 1
                || lines.lastKey() != lines.size()
                || lines.size() > MOST_STRINGS) {
            notices.say("the tuning in the score is incomplete, so it is passed over");
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
}
