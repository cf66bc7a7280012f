package org.fretgloss.annotator.read;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * The numbers that the reader uses, by the element that they stand in: which values are of use, and what is read where
 * another one stands. Who reads one of them keeps to the same bounds.
 *
 * <p>Lengths that nothing else tells are refused, see {@link TimelineReader}; of them only the shape matters here.
 */
final class KnownNumbers {

    /** Semitones of sharps and flats, as {@link Numbers#alteration} believes them. */
    private static final NumberShape ALTERATION = NumberShape.decimal(-3, 3);

    /** Of a duration, in divisions. */
    static final NumberShape LENGTH = NumberShape.decimal(0, 999_999_999);

    private static final NumberShape OCTAVE = NumberShape.whole(0, WrittenPitch.HIGHEST_OCTAVE);
    private static final NumberShape FIFTHS = NumberShape.whole(-Signatures.MOST_FIFTHS, Signatures.MOST_FIFTHS);
    private static final NumberShape STAFF = NumberShape.whole(1, Staves.MOST);

    /** Anything finer counts as nothing in {@link Numbers#fraction}. */
    static final NumberShape DIVISIONS = NumberShape.decimal(
            new BigDecimal("0.000001"), BigDecimal.valueOf(999_999_999), "number from 0.000001 to 999999999");

    /** In divisions, of which some programs count thousands in a quarter note. */
    private static final NumberShape OFFSET = NumberShape.decimal(
            BigDecimal.valueOf(-1_000_000), BigDecimal.valueOf(1_000_000), "number that can be used");

    private static final String WITHOUT_PLACE = "so string and fret of the note are passed over";
    private static final String WITHOUT_TUNING = "so the tuning is passed over";
    private static final String WITHOUT_TRANSPOSITION = "so the notes are read without that transposition";
    private static final String WITHOUT_RATIO = "so the ratio of the tuplet is passed over";
    private static final String NO_INSTRUMENT = "so it tells nothing about the instrument";
    private static final String FIRST_STAFF = "so it is taken for the first staff's";
    private static final String WHERE_IT_STANDS = " counts where it stands";

    private static final Map<String, Map<String, NumberUse>> ELEMENTS = Map.ofEntries(
            entry(
                    "note",
                    Map.of(
                            "duration", use(LENGTH, "so the printed note value tells the length"),
                            "staff", use(STAFF, "so the note is read on the first staff"))),
            entry("backup", Map.of("duration", use(LENGTH, "so the next voice begins with the bar"))),
            entry("forward", Map.of("duration", use(LENGTH, "so the score is refused"))),
            entry(
                    "attributes",
                    Map.of(
                            "divisions", use(DIVISIONS, "so the score is refused"),
                            "staves", use(STAFF, "so the staves that are written to count"))),
            entry(
                    "pitch",
                    Map.of(
                            "alter", use(ALTERATION, "so the note is read without it"),
                            "octave", use(OCTAVE, "so the written pitch is passed over"))),
            entry(
                    "technical",
                    Map.of(
                            "string", use(NumberShape.ANY_WHOLE, WITHOUT_PLACE),
                            "fret", use(NumberShape.ANY_WHOLE, WITHOUT_PLACE))),
            entry("bend", Map.of("bend-alter", use(NumberShape.decimal(-24, 24), "so that bend is passed over"))),
            entry(
                    "time-modification",
                    Map.of(
                            "actual-notes", use(NumberShape.whole(1, 999), WITHOUT_RATIO),
                            "normal-notes", use(NumberShape.whole(1, 999), WITHOUT_RATIO))),
            entry("key", Map.of("fifths", use(FIFTHS, "so the key is read without sharps and flats"))),
            entry(
                    "transpose",
                    Map.of(
                            "chromatic",
                                    use(
                                            NumberShape.decimal(-Signatures.MOST_CHROMATIC, Signatures.MOST_CHROMATIC),
                                            WITHOUT_TRANSPOSITION),
                            "octave-change",
                                    use(
                                            NumberShape.whole(-Signatures.MOST_OCTAVES, Signatures.MOST_OCTAVES),
                                            WITHOUT_TRANSPOSITION))),
            entry(
                    "clef",
                    Map.of(
                            "clef-octave-change",
                            use(
                                    NumberShape.whole(-Signatures.MOST_OCTAVES, Signatures.MOST_OCTAVES),
                                    "so the clef is read without it"))),
            entry(
                    "staff-details",
                    Map.of(
                            "staff-lines",
                                    use(
                                            NumberShape.whole(0, Staves.MOST),
                                            "so the strings in use tell how many there are"),
                            "capo",
                                    use(
                                            NumberShape.whole(0, TuningReader.HIGHEST_CAPO),
                                            "so that capo is passed over"))),
            entry(
                    "staff-tuning",
                    Map.of(
                            "tuning-alter", use(ALTERATION, WITHOUT_TUNING),
                            "tuning-octave", use(OCTAVE, WITHOUT_TUNING))),
            entry(
                    "measure-style",
                    Map.of(
                            "multiple-rest",
                            use(NumberShape.whole(1, 9_999), "so the bars that stand in the score count"))),
            entry("harmony", Map.of("offset", use(OFFSET, "so the chord symbol" + WHERE_IT_STANDS))),
            entry("direction", Map.of("offset", use(OFFSET, "so the direction" + WHERE_IT_STANDS))),
            entry("sound", Map.of("offset", use(OFFSET, "so the instruction" + WHERE_IT_STANDS))),
            entry("root", Map.of("root-alter", use(ALTERATION, "so the root is read without it"))),
            entry("bass", Map.of("bass-alter", use(ALTERATION, "so the bass is read without it"))),
            entry(
                    "degree",
                    Map.of(
                            "degree-value",
                                    use(
                                            NumberShape.whole(1, ChordReader.HIGHEST_DEGREE),
                                            "so that degree of the chord is passed over"),
                            "degree-alter", use(ALTERATION, "so the degree is read without it"))),
            entry(
                    "numeral",
                    Map.of(
                            "numeral-root", use(NumberShape.whole(1, 7), "so the chord has no root"),
                            "numeral-alter", use(ALTERATION, "so the root is read without it"))),
            entry("numeral-key", Map.of("numeral-fifths", use(FIFTHS, "so the chord has no root"))),
            entry(
                    "frame-note",
                    Map.of(
                            "string", use(NumberShape.ANY_WHOLE, "so the diagram is read without that finger"),
                            "fret", use(NumberShape.ANY_WHOLE, "so the diagram is read without that finger"))),
            entry(
                    "midi-instrument",
                    Map.of(
                            "midi-channel", use(NumberShape.whole(1, 16), NO_INSTRUMENT),
                            "midi-program", use(NumberShape.whole(1, 128), NO_INSTRUMENT))));

    private static final Map<String, Map<String, NumberUse>> ATTRIBUTES = Map.of(
            "staff-tuning", Map.of("line", use(NumberShape.whole(1, DeclaredTuning.MOST_STRINGS), WITHOUT_TUNING)),
            "sound", Map.of("tempo", use(NumberShape.decimal(1, Tempos.FASTEST), "so that tempo is passed over")),
            "clef", Map.of("number", use(STAFF, FIRST_STAFF)),
            "staff-details", Map.of("number", use(STAFF, FIRST_STAFF)),
            "key", Map.of("number", use(STAFF, FIRST_STAFF)),
            "time", Map.of("number", use(STAFF, FIRST_STAFF)),
            "transpose", Map.of("number", use(STAFF, "so it is taken for all staves")));

    private static final Map<String, String> REQUIRED = Map.of("pitch", "octave", "staff-tuning", "tuning-octave");

    private KnownNumbers() {}

    /** The number without which an element says nothing that can be used, where it has such a one. */
    static Optional<String> requiredIn(String element) {
        return Optional.ofNullable(REQUIRED.get(element));
    }

    /** What is wanted of the text of an element that stands in another; nothing where nobody reads it as a number. */
    static Optional<NumberUse> ofElement(String parent, String name) {
        return Optional.ofNullable(ELEMENTS.getOrDefault(parent, Map.of()).get(name));
    }

    /** What is wanted of an attribute; nothing where nobody reads it as a number. */
    static Optional<NumberUse> ofAttribute(String element, String name) {
        return Optional.ofNullable(ATTRIBUTES.getOrDefault(element, Map.of()).get(name));
    }

    private static NumberUse use(NumberShape shape, String instead) {
        return new NumberUse(shape, instead);
    }
}
