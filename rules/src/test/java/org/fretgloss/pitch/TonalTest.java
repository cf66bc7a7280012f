package org.fretgloss.pitch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.Gson;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Spellings against an independent library: the npm package tonal 6.4.2 (MIT), whose table in {@code tonal.json} is made by
 * {@code src/test/tonal/make-table.mjs}.
 *
 * <p>Where the library differs from the text of W3C's MusicXML 4.0 schema, the schema decides.
 */
class TonalTest {

    private record Entry(String name, String type, List<String> intervals, Map<String, List<String>> notes) {}

    private record Distance(String from, String to, String interval) {}

    private record Table(List<Entry> kinds, List<Entry> symbols, List<Entry> scales, List<Distance> distances) {}

    /** The schema's elevenths have a third, and its thirteenths an eleventh: {@link KindValuesTest} holds us to them. */
    private static final Map<String, String> BY_THE_SCHEMA = Map.ofEntries(
            entry("dominant-11th", "1 3 5 ♭7 9 11"),
            entry("dominant-13th", "1 3 5 ♭7 9 11 13"),
            entry("major-13th", "1 3 5 7 9 11 13"),
            entry("minor-13th", "1 ♭3 5 ♭7 9 11 13"));

    /** The library keeps the 5 of a 7♭5♯9 and drops that of a 7♭13; we alter and add what the name says. */
    private static final Map<String, String> BY_THE_NAME = Map.of("7b5#9", "1 3 ♭5 ♭7 ♯9", "7b13", "1 3 5 ♭7 ♭13");

    /** Spelled for reading: see {@link Scale}. The notes sound the same. */
    private static final Map<String, String> SPELLED_FOR_READING =
            Map.of("altered", "1 ♭2 ♭3 3 ♭5 ♭6 ♭7", "whole tone", "1 2 3 ♯4 ♯5 ♭7");

    @TestFactory
    Stream<DynamicTest> kindsHaveTheLibrarysTones() {
        return table().kinds().stream()
                .map(entry -> dynamicTest(entry.name(), () -> {
                    List<Degree> ours =
                            ChordKind.ofValue(entry.name()).orElseThrow().degrees();
                    check(entry, ours, BY_THE_SCHEMA);
                }));
    }

    @TestFactory
    Stream<DynamicTest> typedNamesHaveTheLibrarysTones() {
        return table().symbols().stream()
                .map(entry -> dynamicTest("A" + entry.name(), () -> {
                    check(entry, ChordName.parse("A" + entry.name()).tones(), BY_THE_NAME);
                }));
    }

    @TestFactory
    Stream<DynamicTest> scalesHaveTheLibrarysNotes() {
        return table().scales().stream()
                .map(entry -> dynamicTest(entry.name(), () -> {
                    Scale scale = Scale.named(entry.name()).orElseThrow();
                    check(entry, scale.degrees(), SPELLED_FOR_READING);
                    assertThat(scale.degrees().stream().map(Degree::chroma))
                            .containsExactlyElementsOf(
                                    degrees(entry).stream().map(Degree::chroma).toList());
                }));
    }

    @Test
    void everyScaleIsCompared() {
        assertThat(table().scales())
                .extracting(Entry::name)
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(Scale.values()).map(Scale::toString).toList());
    }

    @TestFactory
    Stream<DynamicTest> intervalsHaveTheLibrarysNames() {
        return table().distances().stream()
                .map(distance -> dynamicTest(distance.from() + " to " + distance.to(), () -> {
                    Pitch from = Pitch.parse(distance.from());
                    Pitch to = Pitch.parse(distance.to());
                    assertThat(Interval.between(from, to)).hasToString(inWords(distance.interval()));
                }));
    }

    private static final Map<String, String> QUALITIES = Map.of(
            "P", "perfect",
            "M", "major",
            "m", "minor",
            "d", "diminished",
            "A", "augmented",
            "AA", "doubly augmented");

    private static final List<String> NUMBERS =
            List.of("unison", "second", "third", "fourth", "fifth", "sixth", "seventh", "octave");

    /** The library's "3m", "-13AA" in words; its sign tells the direction, and a compound interval is over 8. */
    private static String inWords(String interval) {
        int number = Integer.parseInt(interval.replaceAll("\\D", ""));
        int simple = number <= 8 ? number : (number - 2) % 7 + 2;
        return (number > 8 ? "compound " : "")
                + QUALITIES.get(interval.replaceAll("[-\\d]", "")) + " "
                + NUMBERS.get(simple - 1);
    }

    /** Degrees and spelled notes are the library's, unless we differ and say so: then exactly as we say. */
    private static void check(Entry entry, List<Degree> ours, Map<String, String> different) {
        if (different.containsKey(entry.name())) {
            assertThat(ours)
                    .isEqualTo(Degree.parseAll(different.get(entry.name())))
                    .isNotEqualTo(degrees(entry));
            return;
        }
        assertThat(ours).containsExactlyElementsOf(degrees(entry));
        entry.notes().forEach((tonic, notes) -> {
            PitchClass root = PitchClass.parse(tonic);
            assertThat(ours.stream().map(root::plus))
                    .as("on %s", tonic)
                    .containsExactlyElementsOf(
                            notes.stream().map(PitchClass::parse).toList());
        });
    }

    private static List<Degree> degrees(Entry entry) {
        return entry.intervals().stream().map(TonalTest::degree).toList();
    }

    /** The library's "3m", "5d", "7d", "9A" as degrees of the major scale. */
    private static Degree degree(String interval) {
        int number = Integer.parseInt(interval.replaceAll("\\D", ""));
        boolean perfect = List.of(1, 4, 5).contains((number - 1) % 7 + 1);
        int alteration = switch (interval.replaceAll("\\d", "")) {
            case "P", "M" -> 0;
            case "m" -> -1;
            case "d" -> perfect ? -1 : -2;
            case "A" -> 1;
            default -> throw new IllegalArgumentException(interval);
        };
        return new Degree(number, alteration);
    }

    private static Table table() {
        try (InputStream json = Objects.requireNonNull(TonalTest.class.getResourceAsStream("tonal.json"));
                InputStreamReader reader = new InputStreamReader(json, UTF_8)) {
            return new Gson().fromJson(reader, Table.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
