package org.fretgloss.annotator.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.pitch.PitchClass;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The schema is closed: in a document with one finding of each rule, no key may be missing, none be added, and none hold
 * a value of another kind.
 */
class FindingsSchemaTest {

    /** Keys that a document may lack: a place without chord, and a note that bears its own lyric. */
    private static final Set<String> OPTIONAL = Set.of("chord", "chordTone", "carrier", "key", "notes");

    /** Keys that a note may lack besides: out of the box where it has no fret, a phrase where no rule named it. */
    private static final Set<String> OPTIONAL_OF_NOTE = Set.of("chordDegree", "outOfBox", "phrase");

    /** No key of ours holds a list in a list. */
    private static final JsonArray NONSENSE =
            JsonParser.parseString("[[\"surplus\"]]").getAsJsonArray();

    private static final JsonSchema SCHEMA = schema();
    private static final JsonObject SAMPLE = sample();

    private static JsonSchema schema() {
        InputStream source = Objects.requireNonNull(FindingsJson.class.getResourceAsStream("findings.schema.json"));
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(source);
    }

    /** The findings of a solo that has every mark, but for one of each rule, and its first note. */
    private static JsonObject sample() {
        try {
            ScoreFile score = ScoreFile.read(Path.of("../fixtures/harbour-light-shuffle/score.musicxml"));
            Progression form = Progression.form("twelve-bar", PitchClass.parse("A"));
            Given given = new Given(Optional.empty(), Optional.of(form), Optional.empty());
            JsonObject document = JsonParser.parseString(FindingsJson.withAllNotes(
                            Fretgloss.withFoundRules().annotate(score, Request.PLAIN.with(given))))
                    .getAsJsonObject();
            TreeMap<String, JsonElement> oneEach = new TreeMap<>();
            document.getAsJsonArray("findings")
                    .forEach(finding -> oneEach.putIfAbsent(
                            finding.getAsJsonObject().get("rule").getAsString(), finding));
            JsonArray findings = new JsonArray();
            oneEach.values().forEach(findings::add);
            document.add("findings", findings);
            JsonArray notes = new JsonArray();
            notes.add(document.getAsJsonArray("notes").get(0));
            document.add("notes", notes);
            return document;
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean isAccepted(JsonObject document) {
        return SCHEMA.validate(document.toString(), InputFormat.JSON).isEmpty();
    }

    @Test
    void theSampleHasEveryRuleAndIsAccepted() {
        assertThat(SAMPLE.getAsJsonArray("findings"))
                .extracting(finding -> finding.getAsJsonObject().get("rule").getAsString())
                .containsExactly(
                        "bend", "box", "climax", "landing", "outline", "outside", "phrase", "reach", "space", "third");
        assertThat(isAccepted(SAMPLE)).isTrue();
    }

    @Test
    void aChangeOfColourIsToMajorOrMinor() {
        assertThat(isAccepted(withColour("major"))).isTrue();
        assertThat(isAccepted(withColour("minor"))).isTrue();
        assertThat(isAccepted(withColour("bright"))).isFalse();
    }

    private static JsonObject withColour(String to) {
        JsonObject document = SAMPLE.deepCopy();
        JsonObject finding = finding(document, "outside");
        JsonObject values = new JsonObject();
        values.addProperty("to", to);
        finding.addProperty("rule", "colour");
        finding.add("values", values);
        return document;
    }

    @Test
    void aPhraseVariesAndAnswersPhrasesByTheirLetters() {
        assertThat(isAccepted(withPhrase("A", "A", "A"))).isTrue();
        assertThat(isAccepted(withPhrase("AB", "C", "C"))).isTrue();
        assertThat(isAccepted(withPhrase("A'", "A", "A"))).isFalse();
        assertThat(isAccepted(withPhrase("A", "", "A"))).isFalse();
        assertThat(isAccepted(withPhrase("A′", "A", "A"))).isFalse();
    }

    private static JsonObject withPhrase(String letter, String variantOf, String answers) {
        JsonObject document = SAMPLE.deepCopy();
        JsonObject values = finding(document, "phrase").getAsJsonObject("values");
        values.addProperty("letter", letter);
        values.addProperty("variantOf", variantOf);
        values.addProperty("answers", answers);
        return document;
    }

    private static JsonObject finding(JsonObject document, String rule) {
        return document.getAsJsonArray("findings").asList().stream()
                .map(JsonElement::getAsJsonObject)
                .filter(one -> one.get("rule").getAsString().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @TestFactory
    Stream<DynamicTest> noKeyMayBeMissing() {
        return keys(SAMPLE, List.of())
                .filter(path -> !mayLack(path.get(0), path.get(path.size() - 1)))
                .map(path -> refused("without " + path, path, parent -> parent.remove(path.get(path.size() - 1))));
    }

    private static boolean mayLack(String list, String key) {
        return OPTIONAL.contains(key) || (list.equals("notes") && OPTIONAL_OF_NOTE.contains(key));
    }

    @TestFactory
    Stream<DynamicTest> noValueMayBeOfAnotherKind() {
        return keys(SAMPLE, List.of())
                .map(path -> refused(
                        "another kind of " + path,
                        path,
                        parent -> parent.add(path.get(path.size() - 1), NONSENSE.deepCopy())));
    }

    @TestFactory
    Stream<DynamicTest> noKeyMayBeAdded() {
        return keys(SAMPLE, List.of())
                .map(path -> path.subList(0, path.size() - 1))
                .distinct()
                .map(object -> {
                    List<String> surplus = new ArrayList<>(object);
                    surplus.add("surplus");
                    return refused("a key more in " + object, surplus, parent -> parent.addProperty("surplus", 1));
                });
    }

    private static DynamicTest refused(String name, List<String> path, Consumer<JsonObject> change) {
        return dynamicTest(name, () -> {
            JsonObject document = SAMPLE.deepCopy();
            change.accept(parent(document, path));
            assertThat(isAccepted(document)).isFalse();
        });
    }

    /** Every key of a document, by the keys and places that lead to it. */
    private static Stream<List<String>> keys(JsonElement element, List<String> path) {
        if (element.isJsonArray()) {
            JsonArray array = element.getAsJsonArray();
            return Stream.iterate(0, i -> i < array.size(), i -> i + 1)
                    .flatMap(i -> keys(array.get(i), longer(path, i.toString())));
        }
        if (!element.isJsonObject()) {
            return Stream.of();
        }
        return element.getAsJsonObject().entrySet().stream().flatMap(entry -> {
            List<String> key = longer(path, entry.getKey());
            return Stream.concat(Stream.of(key), keys(entry.getValue(), key));
        });
    }

    private static List<String> longer(List<String> path, String step) {
        return Stream.concat(path.stream(), Stream.of(step)).toList();
    }

    private static JsonObject parent(JsonObject document, List<String> path) {
        JsonElement at = document;
        for (String step : path.subList(0, path.size() - 1)) {
            at = at.isJsonArray()
                    ? at.getAsJsonArray().get(Integer.parseInt(step))
                    : at.getAsJsonObject().get(step);
        }
        return at.getAsJsonObject();
    }
}
