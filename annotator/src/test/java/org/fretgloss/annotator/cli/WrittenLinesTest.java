package org.fretgloss.annotator.cli;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fretgloss.annotator.check.InsertedElements;
import org.fretgloss.annotator.check.NoteElement;
import org.fretgloss.annotator.check.OurLyric;
import org.fretgloss.annotator.check.ScoreElements;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What stands in an annotated fixture, every line asked for, told by eyes that share no code with reader and writer. */
class WrittenLinesTest {

    /** In the order in which lines are numbered. */
    private static final List<String> LINES =
            List.of("box", "moves", "outline", "notes", "shape", "phrases", "degrees", "chords", "doubts");

    /** The lines that show findings; the others are read off the analysis. */
    private static final List<String> LINES_OF_FINDINGS =
            List.of("box", "moves", "outline", "notes", "shape", "phrases");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** A fixture before and after. */
    private record Written(String part, String original, String text, List<NoteElement> notes, JsonObject findings) {

        List<OurLyric> lyrics() {
            return notes.stream().flatMap(note -> note.ourLyrics().stream()).toList();
        }
    }

    @TestFactory
    Stream<DynamicContainer> everyFixture() {
        return Fixture.all().stream().map(fixture -> dynamicContainer(fixture.name(), tests(written(fixture))));
    }

    private Written written(Fixture fixture) {
        Path score = folder.resolve(fixture.name() + ".musicxml");
        Path findings = folder.resolve(fixture.name() + ".json");
        List<String> arguments =
                new ArrayList<>(List.of("annotate", fixture.score().toString()));
        arguments.addAll(fixture.options());
        arguments.addAll(List.of("--add-lines", "phrases,degrees,chords", "--curls"));
        arguments.addAll(List.of("-o", score.toString(), "--findings", findings.toString()));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        try {
            String text = Files.readString(score);
            return new Written(
                    fixture.expected().getAsJsonObject("part").get("id").getAsString(),
                    Files.readString(fixture.score()),
                    text,
                    ScoreElements.of(text),
                    JsonParser.parseString(Files.readString(findings)).getAsJsonObject());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Stream<DynamicTest> tests(Written written) {
        return Stream.of(
                dynamicTest("nothing but our elements was inserted", () -> insertsOnlyOurElements(written)),
                dynamicTest("lyrics stand where readers keep them", () -> standsWhereReadersKeepThem(written)),
                dynamicTest("a line has one lyric at a moment", () -> standsOnceAtAMoment(written)),
                dynamicTest("lines are numbered in their order", () -> isNumberedInOrder(written)),
                dynamicTest("lyrics say what the findings say", () -> saysWhatWasFound(written)));
    }

    private static void insertsOnlyOurElements(Written written) {
        List<String> inserted = InsertedElements.between(written.original(), written.text());

        assertThat(inserted).hasSize(written.lyrics().size() + 1);
        assertThat(inserted)
                .filteredOn(element -> element.contains("<miscellaneous-field"))
                .hasSize(1);
    }

    private static void standsWhereReadersKeepThem(Written written) {
        boolean hasNotation = written.notes().stream()
                .filter(note -> note.part().equals(written.part()))
                .anyMatch(note -> !note.onTablature());

        assertThat(written.lyrics()).isNotEmpty().allSatisfy(lyric -> {
            NoteElement note = lyric.note();
            assertThat(note.part()).isEqualTo(written.part());
            assertThat(note.isStruck()).as("struck").isTrue();
            assertThat(note.isChordMember()).as("further note of a chord").isFalse();
            assertThat(note.onTablature()).as("on tablature").isEqualTo(!hasNotation);
        });
    }

    private static void standsOnceAtAMoment(Written written) {
        assertThat(written.lyrics()).extracting(OurLyric::moment).doesNotHaveDuplicates();
    }

    /** The fixtures have no lyrics of their own, so ours begin at 1. */
    private static void isNumberedInOrder(Written written) {
        assertThat(written.original()).doesNotContain("<lyric");
        Map<String, TreeSet<String>> numbers = written.lyrics().stream()
                .collect(groupingBy(
                        OurLyric::line, TreeMap::new, mapping(OurLyric::number, toCollection(TreeSet::new))));
        List<String> lines = LINES.stream().filter(numbers::containsKey).toList();

        assertThat(lines).contains("box", "phrases", "degrees").hasSize(numbers.size());
        for (int i = 0; i < lines.size(); i++) {
            assertThat(numbers.get(lines.get(i))).as(lines.get(i)).containsExactly(String.valueOf(i + 1));
        }
    }

    private static void saysWhatWasFound(Written written) {
        Map<String, String> lyrics = written.lyrics().stream()
                .filter(lyric -> LINES_OF_FINDINGS.contains(lyric.line()))
                .collect(toMap(lyric -> place(lyric.note().ordinal(), lyric.line()), OurLyric::text));
        Map<String, String> texts = written.findings().getAsJsonArray("findings").asList().stream()
                .map(JsonElement::getAsJsonObject)
                .filter(finding -> !finding.get("text").isJsonNull())
                .collect(groupingBy(
                        finding -> place(bearer(finding), finding.get("line").getAsString()),
                        TreeMap::new,
                        mapping(finding -> finding.get("text").getAsString(), joining(" · "))));

        assertThat(lyrics).isEqualTo(texts);
    }

    private static int bearer(JsonObject finding) {
        return finding.get(finding.has("carrier") ? "carrier" : "note").getAsInt();
    }

    private static String place(int note, String line) {
        return "note " + note + ", " + line;
    }
}
