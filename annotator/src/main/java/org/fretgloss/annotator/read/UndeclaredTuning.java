package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;

/**
 * How an instrument is tuned whose score does not say it: the standard way, unless the written pitches fit another tuning
 * that is common. A tuning fits where 95 % of the notes agree with it up to octaves.
 */
final class UndeclaredTuning {

    private static final double NEARLY_ALL = 0.95;

    /** Fewer notes may all be slips. */
    private static final int NOTES_THAT_TELL = 4;

    private final String unsaid;
    private final Notices notices;

    /**
     * Looks for a tuning where none can be used.
     *
     * @param passedOver whether the score has a tuning that was passed over
     */
    UndeclaredTuning(boolean passedOver, Notices notices) {
        this.unsaid = passedOver
                ? "the tuning in the score cannot be used"
                : "the score does not say how the strings are tuned";
        this.notices = notices;
    }

    /**
     * The tuning that fits best.
     *
     * @param lines how many lines the tablature has, if it says so
     * @param capo the declared capo, which the tuning does not get
     */
    Tuning of(OptionalInt lines, int capo, List<Stroke> strokes) {
        int used = strokes.stream()
                .flatMap(stroke -> stroke.place().stream())
                .map(StringFret::string)
                .max(Comparator.naturalOrder())
                .orElse(0);
        int strings = Math.max(lines.orElse(Tuning.STANDARD.size()), used);
        Tuning standard = CommonTunings.standard(strings);
        if (used == 0) {
            return standard;
        }
        Optional<NamedTuning> fitting = Stream.concat(
                        CommonTunings.of(strings), lines.isPresent() ? Stream.empty() : smaller(strings, used))
                .filter(named -> fits(named.tuning().withCapo(capo), strokes))
                .findFirst()
                .filter(named -> !named.tuning().equals(standard));
        fitting.ifPresentOrElse(
                named -> notices.say(
                        unsaid + "; the notes fit " + named.name() + ": " + NamedTuning.strings(named.tuning())),
                () -> notices.say(unsaid + ", so standard tuning is taken: " + NamedTuning.strings(standard)));
        return fitting.map(NamedTuning::tuning).orElse(standard);
    }

    /** Instruments with fewer strings than a guitar that still have those that are played. */
    private static Stream<NamedTuning> smaller(int strings, int used) {
        return Stream.of(4, 5).filter(fewer -> fewer < strings && fewer >= used).flatMap(CommonTunings::of);
    }

    private static boolean fits(Tuning tuning, List<Stroke> strokes) {
        PitchOffsets offsets = PitchOffsets.of(strokes, Tunings.of(tuning));
        return offsets.asked() >= NOTES_THAT_TELL
                && offsets.arePlain()
                && offsets.explained() >= NEARLY_ALL * offsets.asked();
    }
}
