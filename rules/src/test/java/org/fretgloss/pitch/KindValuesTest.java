package org.fretgloss.pitch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kinds of chord against the words of W3C's MusicXML 4.0 schema, which stand in {@code kind-values.txt}. */
class KindValuesTest {

    /** Kind-value to the definition in words, in the schema's order. */
    private static final Map<String, String> SCHEMA = schema();

    /** What the schema's words call a kind that others are built on, where that is not its value. */
    private static final Map<String, String> BASES = Map.of(
            "major triad", "major",
            "minor triad", "minor",
            "augmented triad", "augmented",
            "diminished triad", "diminished",
            "dominant-seventh", "dominant");

    @Test
    void areAllThereAndNoOther() {
        assertThat(SCHEMA).hasSize(33);
        assertThat(ChordKind.values()).extracting(ChordKind::value).containsExactlyElementsOf(SCHEMA.keySet());
    }

    @TestFactory
    Stream<DynamicTest> haveTheTonesThatTheSchemaPutsInWords() {
        Map<String, String> defined = new LinkedHashMap<>(SCHEMA);
        defined.values().removeIf(String::isEmpty);
        defined.remove("pedal", "pedal-point bass");
        assertThat(defined).as("kinds with intervals").hasSize(25);
        return defined.keySet().stream()
                .map(value -> dynamicTest(
                        value, () -> assertThat(kind(value).degrees()).isEqualTo(inWords(value))));
    }

    /** The chords as textbooks print them in C and A minor: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "Neapolitan, D♭, D♭ F A♭",
        "Italian, A♭, A♭ C F♯",
        "French, A♭, A♭ C D F♯",
        "German, A♭, A♭ C E♭ F♯",
        "Tristan, F, F B D♯ G♯"
    })
    void namedChordsHaveTheNotesOfTheTextbooks(String value, String root, String notes) {
        PitchClass lowest = PitchClass.parse(root);
        assertThat(kind(value).degrees().stream()
                        .map(degree -> lowest.plus(degree).toString())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(notes);
    }

    @ParameterizedTest
    @CsvSource({"pedal", "other", "none"})
    void kindsThatAreNoChordHaveNoTones(String value) {
        assertThat(kind(value).degrees()).isEmpty();
    }

    private static ChordKind kind(String value) {
        return ChordKind.ofValue(value).orElseThrow();
    }

    /** "dominant-seventh, major ninth" is the tones of the dominant and a 9; a triad's own words leave out its root. */
    private static List<Degree> inWords(String value) {
        List<String> words = List.of(SCHEMA.getOrDefault(value, "").split(", ", -1));
        String base = BASES.getOrDefault(words.get(0), words.get(0));
        boolean builtOnAnother = SCHEMA.containsKey(base);
        Stream<Degree> below = builtOnAnother ? inWords(base).stream() : Stream.of(new Degree(1, 0));
        return Stream.concat(below, words.stream().skip(builtOnAnother ? 1 : 0).map(KindValuesTest::interval))
                .toList();
    }

    /** "diminished seventh", "perfect 11th", "added sixth" as a degree of the major scale. */
    private static Degree interval(String words) {
        String[] parts = words.split(" ", 2);
        int number = switch (parts[1]) {
            case "second" -> 2;
            case "third" -> 3;
            case "fourth" -> 4;
            case "fifth" -> 5;
            case "sixth" -> 6;
            case "seventh" -> 7;
            case "ninth" -> 9;
            case "11th" -> 11;
            case "13th" -> 13;
            default -> throw new IllegalArgumentException(words);
        };
        boolean perfect = number == 4 || number == 5 || number == 11;
        int alteration = switch (parts[0]) {
            case "major", "perfect", "added" -> 0;
            case "minor" -> -1;
            case "diminished" -> perfect ? -1 : -2;
            case "augmented" -> 1;
            default -> throw new IllegalArgumentException(words);
        };
        return new Degree(number, alteration);
    }

    private static Map<String, String> schema() {
        try (InputStream table =
                Objects.requireNonNull(KindValuesTest.class.getResourceAsStream("kind-values.txt"), "no table")) {
            Map<String, String> schema = new LinkedHashMap<>();
            new String(table.readAllBytes(), UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(": ?", 2))
                    .forEach(parts -> schema.put(parts[0], parts[1]));
            return schema;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
