package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.neck.Tuning;

/** What instruments are tuned to, by their number of strings, the usual first (common practice, no source). */
final class CommonTunings {

    private static final int GUITAR_STRINGS = 6;

    /** Below this the strings of a guitar hang loose. */
    private static final int LOWEST_SHIFT = 7;

    private static final NamedTuning GUITAR = new NamedTuning("standard tuning", Tuning.STANDARD);

    private static final List<NamedTuning> SIX_STRINGS = List.of(
            GUITAR,
            NamedTuning.of("drop D", "E4 B3 G3 D3 A2 D2"),
            NamedTuning.of("half a step down", "E♭4 B♭3 G♭3 D♭3 A♭2 E♭2"),
            NamedTuning.of("a whole step down", "D4 A3 F3 C3 G2 D2"),
            NamedTuning.of("drop C♯", "D♯4 A♯3 F♯3 C♯3 G♯2 C♯2"),
            NamedTuning.of("drop C", "D4 A3 F3 C3 G2 C2"),
            NamedTuning.of("open G", "D4 B3 G3 D3 G2 D2"),
            NamedTuning.of("open D", "D4 A3 F♯3 D3 A2 D2"),
            NamedTuning.of("open E", "E4 B3 G♯3 E3 B2 E2"),
            NamedTuning.of("open A", "E4 C♯4 A3 E3 A2 E2"),
            NamedTuning.of("DADGAD", "D4 A3 G3 D3 A2 D2"));

    private static final Map<Integer, List<NamedTuning>> OTHERS = Map.of(
            4,
            List.of(
                    NamedTuning.of("bass", "G2 D2 A1 E1"),
                    NamedTuning.of("bass in drop D", "G2 D2 A1 D1"),
                    NamedTuning.of("ukulele", "A4 E4 C4 G4"),
                    NamedTuning.of("ukulele with a low G", "A4 E4 C4 G3")),
            5,
            List.of(
                    NamedTuning.of("bass", "G2 D2 A1 E1 B0"),
                    NamedTuning.of("bass with a high C", "C3 G2 D2 A1 E1"),
                    NamedTuning.of("banjo in open G", "D4 B3 G3 D3 G4")),
            7,
            List.of(
                    NamedTuning.of("standard tuning", "E4 B3 G3 D3 A2 E2 B1"),
                    NamedTuning.of("drop A", "E4 B3 G3 D3 A2 E2 A1")),
            8,
            List.of(
                    NamedTuning.of("standard tuning", "E4 B3 G3 D3 A2 E2 B1 F♯1"),
                    NamedTuning.of("drop E", "E4 B3 G3 D3 A2 E2 B1 E1")));

    private CommonTunings() {}

    /** The standard tuning for a number of strings: basses with four or five, guitars with six to eight. */
    static Tuning standard(int strings) {
        return OTHERS.getOrDefault(strings, SIX_STRINGS).get(0).tuning();
    }

    /** The tunings for a number of strings, and a guitar's standard tuning lowered, the likelier first. */
    static Stream<NamedTuning> of(int strings) {
        return strings == GUITAR_STRINGS
                ? Stream.concat(
                        SIX_STRINGS.stream(),
                        IntStream.rangeClosed(1, LOWEST_SHIFT).mapToObj(CommonTunings::lowered))
                : OTHERS.getOrDefault(strings, List.of()).stream();
    }

    private static NamedTuning lowered(int semitones) {
        return new NamedTuning(
                GUITAR.name() + " " + semitones + (semitones == 1 ? " semitone down" : " semitones down"),
                TuningShift.lowered(GUITAR.tuning(), semitones));
    }
}
