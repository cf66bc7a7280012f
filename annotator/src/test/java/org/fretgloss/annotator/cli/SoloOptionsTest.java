package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which part is read, under which chords, and which of the lines are written. */
class SoloOptionsTest {

    /** Two parts, the second of which is the solo. */
    private static final String TWO_PARTS = "copper-rain";

    /** No chords of its own. */
    private static final String SHUFFLE = "harbour-light-shuffle";

    private static final String FORM = "twelve-bar A";

    private static final Pattern OURS = Pattern.compile(
            "<lyric number=\"(\\d)\" name=\"fretgloss:([a-z]+)\">.*?<text>(.*?)</text>", Pattern.DOTALL);

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    /** A score with our lines, and its findings. */
    private record Result(List<MatchResult> lyrics, JsonObject findings, String notices) {

        List<String> lines() {
            return lyrics.stream().map(lyric -> lyric.group(2)).distinct().toList();
        }

        JsonElement get(String key) {
            return Objects.requireNonNull(findings.get(key), key);
        }

        Stream<JsonObject> of(String rule) {
            return findings.getAsJsonArray("findings").asList().stream()
                    .map(JsonElement::getAsJsonObject)
                    .filter(finding -> finding.get("rule").getAsString().equals(rule));
        }

        /** What was found, whatever is shown of it. */
        List<String> marks() {
            return findings.getAsJsonArray("findings").asList().stream()
                    .map(JsonElement::getAsJsonObject)
                    .map(finding -> finding.get("note") + " " + finding.get("rule") + " " + finding.get("values"))
                    .toList();
        }
    }

    private Result annotated(String fixture, String... options) throws IOException {
        Path out = folder.resolve("out.musicxml");
        Path findings = folder.resolve("findings.json");
        List<String> arguments = new ArrayList<>(List.of("annotate", "../fixtures/" + fixture + "/score.musicxml"));
        arguments.addAll(List.of("-o", out.toString(), "--findings", findings.toString(), "--replace"));
        arguments.addAll(List.of(options));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        return new Result(
                OURS.matcher(Files.readString(out)).results().toList(),
                JsonParser.parseString(Files.readString(findings)).getAsJsonObject(),
                session.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Lead Guitar", "P2", "2"})
    @DisplayName("a part goes by its name, its id and its number; the solo's part needs no word")
    void part(String name) throws IOException {
        Result named = annotated(TWO_PARTS, "--part", name);

        assertThat(named.get("part")).isEqualTo(JsonParser.parseString("{\"id\":\"P2\",\"name\":\"Lead Guitar\"}"));
        assertThat(named.marks()).isEqualTo(annotated(TWO_PARTS).marks());
    }

    @Test
    @DisplayName("another part can be asked for; one that is not there is refused with the names of those that are")
    void anotherPart() throws IOException {
        assertThat(annotated(TWO_PARTS, "--part", "Rhythm Guitar")
                        .get("part")
                        .getAsJsonObject()
                        .get("id")
                        .getAsString())
                .isEqualTo("P1");

        Session session = Session.run("annotate", "../fixtures/" + TWO_PARTS + "/score.musicxml", "--part", "3");
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err().lines())
                .singleElement()
                .asString()
                .contains("'3'", "'Rhythm Guitar'", "'Lead Guitar'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"box", "moves", "outline", "notes", "shape", "degrees", "chords"})
    @DisplayName("a line alone: nothing else is written, and the findings stay as they are")
    void oneLine(String line) throws IOException {
        Result alone = annotated(SHUFFLE, "--form", FORM, "--lines", line);

        assertThat(alone.lines()).containsExactly(line);
        assertThat(alone.lyrics())
                .allSatisfy(lyric -> assertThat(lyric.group(1)).isEqualTo("1"));
        assertThat(alone.get("findings"))
                .isEqualTo(annotated(SHUFFLE, "--form", FORM).get("findings"));
    }

    @Test
    @DisplayName("lines are numbered in their own order, not in the order they are asked for")
    void orderOfLines() throws IOException {
        assertThat(annotated(SHUFFLE, "--lines", "shape,moves", "--lines", "box")
                        .lyrics())
                .extracting(lyric -> lyric.group(2) + lyric.group(1))
                .containsOnly("box1", "moves2", "shape3");
    }

    @Test
    @DisplayName("curls are found in any case and written when asked")
    void curls() throws IOException {
        Result usual = annotated("plain-clothes");
        Result asked = annotated("plain-clothes", "--curls");

        assertThat(curlTexts(usual)).isNotEmpty().allMatch(JsonElement::isJsonNull);
        assertThat(curlTexts(asked))
                .hasSameSizeAs(curlTexts(usual))
                .allSatisfy(text -> assertThat(text.getAsString()).startsWith("¼"));
        assertThat(asked.marks()).isEqualTo(usual.marks());
    }

    private static List<JsonElement> curlTexts(Result result) {
        return result.of("bend")
                .filter(bend ->
                        bend.getAsJsonObject("values").get("kind").getAsString().equals("curl"))
                .map(bend -> bend.get("text"))
                .toList();
    }

    @Test
    @DisplayName("chords that the user gives win over the score's, and have no key")
    void givenChords() throws IOException {
        Result given = annotated("lamp-oil-slow-blues", "--chords", "B9 | %");

        assertThat(given.get("form").getAsJsonObject().keySet()).containsExactly("name", "startBar");
        assertThat(given.get("form").getAsJsonObject().get("name").getAsString())
                .isEqualTo("given");
        assertThat(given.of("outline"))
                .isNotEmpty()
                .allSatisfy(outline -> assertThat(
                                outline.getAsJsonObject("values").get("chord").getAsString())
                        .isEqualTo("B9"));
        assertThat(given.notices()).contains("chords: B9 (as you gave them");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "2", "5"})
    @DisplayName("a form begins where the user says")
    void formStart(String bar) throws IOException {
        JsonObject form = annotated(SHUFFLE, "--form", FORM, "--form-start", bar)
                .get("form")
                .getAsJsonObject();

        assertThat(form)
                .isEqualTo(
                        JsonParser.parseString("{\"name\":\"twelve-bar\",\"key\":\"A\",\"startBar\":\"" + bar + "\"}"));
    }
}
