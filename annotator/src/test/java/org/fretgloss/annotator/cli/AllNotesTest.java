package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code --all-notes}: every note of the solo among the findings, and nothing there that they contradict. */
class AllNotesTest {

    private static final Path FOLDER = Path.of("../fixtures/all-notes");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private JsonObject found(Path score, Collection<String> options) throws IOException {
        Path findings = folder.resolve("findings.json");
        List<String> arguments = new ArrayList<>(List.of("annotate", score.toString(), "--replace"));
        arguments.addAll(options);
        arguments.addAll(List.of("-o", folder.resolve("out.musicxml").toString(), "--findings", findings.toString()));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        return JsonParser.parseString(Files.readString(findings)).getAsJsonObject();
    }

    private static List<JsonObject> list(JsonObject document, String key) {
        return StreamSupport.stream(document.getAsJsonArray(key).spliterator(), false)
                .map(JsonElement::getAsJsonObject)
                .toList();
    }

    @Test
    void everyNoteOfASmallScoreIsAsItWasWrittenByHand() throws IOException {
        JsonObject found =
                found(FOLDER.resolve("score.musicxml"), List.of("--home", "A minor pentatonic", "--all-notes"));
        JsonArray expected = JsonParser.parseString(Files.readString(FOLDER.resolve("notes.json")))
                .getAsJsonArray();
        assertThat(found.getAsJsonArray("notes")).containsExactlyElementsOf(expected);
    }

    @Test
    void theyAreListedOnlyWhereTheyAreAskedFor() throws IOException {
        assertThat(found(FOLDER.resolve("score.musicxml"), List.of()).has("notes"))
                .isFalse();
    }

    @Test
    void theyNeedFindingsToStandIn() {
        Session session =
                Session.run("annotate", FOLDER.resolve("score.musicxml").toString(), "--all-notes", "-o", "-");
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err()).startsWith("fretgloss: --all-notes").contains("--findings");
        assertThat(session.out().size()).isZero();
    }

    static List<Fixture> fixtures() {
        return Fixture.all();
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void oneEntryForEachNoteInOrderAndNoFindingContradictsIt(Fixture fixture) throws IOException {
        List<String> options = new ArrayList<>(fixture.options());
        options.add("--all-notes");
        JsonObject found = found(fixture.score(), options);
        List<JsonObject> notes = list(found, "notes");
        assertThat(notes).hasSize(fixture.expected().get("notes").getAsInt());
        assertThat(notes).isSortedAccordingTo((a, b) -> Double.compare(onset(a), onset(b)));

        Map<Integer, JsonObject> byOrdinal = new HashMap<>();
        notes.forEach(note -> byOrdinal.put(note.get("note").getAsInt(), note));
        assertThat(byOrdinal).hasSameSizeAs(notes);
        List<JsonObject> findings = list(found, "findings");
        findings.forEach(finding -> assertAgrees(
                finding,
                Objects.requireNonNull(byOrdinal.get(finding.get("note").getAsInt()))));
        assertThat(ordinals(findings.stream()
                        .filter(finding -> rule(finding).equals("reach"))
                        .toList()))
                .containsExactlyElementsOf(ordinals(
                        notes.stream().filter(note -> is(note, "outOfBox")).toList()));
        assertThat(ordinals(findings.stream()
                        .filter(finding -> rule(finding).equals("phrase"))
                        .toList()))
                .containsExactlyElementsOf(ordinals(
                        notes.stream().filter(note -> is(note, "phraseStart")).toList()));
    }

    private static void assertAgrees(JsonObject finding, JsonObject note) {
        for (String key : List.of("bar", "beat", "string", "fret")) {
            assertThat(note.get(key)).as("%s of %s", key, finding).isEqualTo(finding.get(key));
        }
        JsonObject values = finding.getAsJsonObject("values");
        switch (rule(finding)) {
            case "box" -> assertThat(note.get("box")).isEqualTo(values.get("box"));
            case "bend" -> {
                assertThat(note.get("degree")).isEqualTo(values.get("toDegree"));
                assertThat(note.get("peakMidi").getAsDouble() - note.get("midi").getAsDouble())
                        .isEqualTo(values.get("semitones").getAsDouble());
            }
            case "outside" -> {
                assertThat(note.get("degree")).isEqualTo(values.get("degree"));
                assertThat(note.get("chord")).isEqualTo(values.get("chord"));
                assertThat(is(note, "outOfScale")).isTrue();
            }
            case "phrase" -> assertThat(note.get("phrase")).isEqualTo(values.get("letter"));
            case "outline" -> assertThat(note.get("chord")).isEqualTo(values.get("chord"));
            default -> {}
        }
    }

    private static boolean is(JsonObject note, String key) {
        return note.has(key) && note.get(key).getAsBoolean();
    }

    private static String rule(JsonObject finding) {
        return finding.get("rule").getAsString();
    }

    private static List<Integer> ordinals(List<JsonObject> notes) {
        return notes.stream().map(note -> note.get("note").getAsInt()).toList();
    }

    private static double onset(JsonObject note) {
        String[] terms = note.get("onset").getAsString().split("/", 2);
        return Double.parseDouble(terms[0]) / (terms.length < 2 ? 1 : Double.parseDouble(terms[1]));
    }
}
