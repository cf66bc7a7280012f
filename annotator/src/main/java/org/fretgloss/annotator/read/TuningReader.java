package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.audiveris.proxymusic.StaffDetails;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;

/**
 * How the instrument is tuned, from the beginning and where it is retuned later. A tuning that is declared only later
 * holds from the beginning; a capo that is put on later does not.
 */
final class TuningReader {

    static final int HIGHEST_CAPO = 24;

    /** What the staves declare from one moment on. */
    private static final class Declaration {

        private final Bar bar;
        private final List<StaffDetails> staves = new ArrayList<>();

        private Declaration(Bar bar) {
            this.bar = bar;
        }
    }

    private final Staves staves;
    private final List<Stroke> strokes;
    private final Unread unread;
    private final Notices notices;
    private final NavigableMap<Fraction, Declaration> declared = new TreeMap<>();

    /** What each declaration turned out to be, so that it is asked, and told, once. */
    private final Map<Fraction, Optional<Tuning>> understood = new HashMap<>();

    /** The notes from each declaration to the next. */
    private final Map<Fraction, List<Stroke>> meant = new HashMap<>();

    private TuningReader(Staves staves, List<Bar> bars, List<Stroke> strokes, Unread unread, Notices notices) {
        this.staves = staves;
        this.strokes = strokes;
        this.unread = unread;
        this.notices = notices;
        declared.put(Fraction.ZERO, new Declaration(bars.get(0)));
        Fraction first = strokes.stream().map(Stroke::onset).findFirst().orElse(Fraction.ZERO);
        for (Placed<StaffDetails> placed : staves.details()) {
            Bar bar = bars.get(placed.bar());
            Fraction moment = bar.start().plus(placed.at());
            declared.computeIfAbsent(moment.isMoreThan(first) ? moment : Fraction.ZERO, unseen -> new Declaration(bar))
                    .staves
                    .add(placed.item());
        }
        for (Stroke stroke : strokes) {
            meant.computeIfAbsent(declared.floorKey(stroke.onset()), unseen -> new ArrayList<>())
                    .add(stroke);
        }
    }

    /**
     * Reads the tunings.
     *
     * @param strokes in order of time
     */
    static Tunings read(Staves staves, List<Bar> bars, List<Stroke> strokes, Unread unread, Notices notices) {
        TuningReader reader = new TuningReader(staves, bars, strokes, unread, notices);
        Tunings tunings = reader.read();
        return reader.saysOfACapo() || !tunings.stayTheSame()
                ? tunings
                : Tunings.of(TuningShift.shown(tunings.first(), PitchOffsets.of(strokes, tunings), notices));
    }

    private Tunings read() {
        Tuning inForce = first();
        NavigableMap<Fraction, Tuning> tunings = new TreeMap<>(Map.of(Fraction.ZERO, inForce));
        for (Map.Entry<Fraction, Declaration> later :
                declared.tailMap(Fraction.ZERO, false).entrySet()) {
            Tuning before = inForce;
            int capo = capoFrom(later.getValue()).orElse(before.capo());
            inForce = tuningFrom(later.getKey()).orElse(before).withCapo(capo);
            if (!inForce.equals(before)) {
                tunings.put(later.getKey(), inForce);
                tell(before, inForce, later.getValue().bar.number());
            }
        }
        return new Tunings(tunings);
    }

    private Tuning first() {
        int capo = Optional.ofNullable(declared.get(Fraction.ZERO)).stream()
                .flatMapToInt(beginning -> capoFrom(beginning).stream())
                .findFirst()
                .orElse(0);
        return declared.keySet().stream()
                .flatMap(moment -> tuningFrom(moment).stream())
                .findFirst()
                .orElseGet(() ->
                        new UndeclaredTuning(declaresAnything(), notices).of(staves.tablatureLines(), capo, strokes))
                .withCapo(capo);
    }

    /** Whether there is a tuning in the score, be it none that can be used. */
    private boolean declaresAnything() {
        return staves.details().stream()
                .anyMatch(placed -> !placed.item().getStaffTuning().isEmpty());
    }

    private boolean saysOfACapo() {
        return staves.details().stream().anyMatch(placed -> placed.item().getCapo() != null);
    }

    private Optional<Tuning> tuningFrom(Fraction moment) {
        return understood.computeIfAbsent(
                moment,
                unseen -> Optional.ofNullable(declared.get(moment))
                        .flatMap(declaration -> new DeclaredTuning(unread, notices)
                                .of(declaration.staves, meant.getOrDefault(moment, List.of()), declaration.bar)));
    }

    private OptionalInt capoFrom(Declaration declaration) {
        return declaration.staves.stream()
                .flatMapToInt(staff -> Numbers.whole(staff.getCapo()).stream())
                .filter(fret -> fret >= 0 && fret <= HIGHEST_CAPO)
                .findFirst();
    }

    private void tell(Tuning before, Tuning after, String bar) {
        if (!before.strings().equals(after.strings())) {
            notices.say("the strings are retuned; boxes are counted in the tuning at the beginning", bar);
        }
        if (before.capo() != after.capo()) {
            notices.say(after.capo() == 0 ? "the capo is taken off" : "a capo is put on fret " + after.capo(), bar);
        }
    }
}
