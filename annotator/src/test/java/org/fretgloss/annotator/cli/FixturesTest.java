package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The invented solos, from bytes to findings, against expectations that were written by hand from the definitions.
 * The labels are older than the rules of phrases and hold none of theirs; the solos of {@code fixtures/labelled} do.
 */
class FixturesTest {

    private static final Set<String> NOT_LABELLED = Set.of("phrase", "landing");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @TestFactory
    Stream<DynamicContainer> everyFixture() {
        List<Fixture> fixtures = Fixture.all();
        assertThat(fixtures).hasSizeGreaterThanOrEqualTo(6);
        return fixtures.stream()
                .map(fixture ->
                        DynamicContainer.dynamicContainer(fixture.name(), tests(fixture, fixture.found(folder))));
    }

    private static Stream<DynamicTest> tests(Fixture fixture, JsonObject found) {
        JsonObject expected = fixture.expected();
        JsonObject home = found.getAsJsonObject("home");
        JsonObject summary = found.getAsJsonObject("summary");
        Stream<DynamicTest> whole = Stream.of(
                same(
                        "part",
                        expected.getAsJsonObject("part").get("id"),
                        found.getAsJsonObject("part").get("id")),
                same("tuning", expected.get("tuning"), found.get("tuning")),
                same("capo", expected.get("capo"), found.get("capo")),
                same("home", expected.get("home"), only(home, "tonic", "scale", "added")),
                same("form", expected.get("form"), found.get("form")),
                same("climax", expected.get("climax"), summary.get("climax")),
                same("notes", expected.get("notes"), summary.get("notes")));
        return Stream.concat(whole, findings(expected, found));
    }

    private static DynamicTest same(String what, JsonElement expected, JsonElement found) {
        return dynamicTest(what, () -> assertThat(found).isEqualTo(expected));
    }

    private static JsonObject only(JsonObject object, String... keys) {
        JsonObject part = new JsonObject();
        for (String key : keys) {
            part.add(key, object.get(key));
        }
        return part;
    }

    /** One test for each rule, and one for the order of all findings. */
    private static Stream<DynamicTest> findings(JsonObject expected, JsonObject found) {
        TreeSet<String> rules = new TreeSet<>();
        Stream.concat(list(expected), list(found)).forEach(finding -> rules.add(rule(finding)));
        Stream<DynamicTest> each = rules.stream().map(rule -> dynamicTest(rule, () -> findings(rule, expected, found)));
        DynamicTest order =
                dynamicTest("order", () -> assertThat(marks(found)).containsExactlyElementsOf(marks(expected)));
        return Stream.concat(each, Stream.of(order));
    }

    private static void findings(String rule, JsonObject expected, JsonObject found) {
        assertThat(FindingsDiff.between(of(rule, expected), of(rule, found))).isEmpty();
    }

    private static List<JsonObject> of(String rule, JsonObject document) {
        return list(document).filter(finding -> rule(finding).equals(rule)).toList();
    }

    private static List<String> marks(JsonObject document) {
        return list(document)
                .map(finding -> "note " + finding.get("note") + ": " + rule(finding))
                .toList();
    }

    private static Stream<JsonObject> list(JsonObject document) {
        return StreamSupport.stream(document.getAsJsonArray("findings").spliterator(), false)
                .map(JsonElement::getAsJsonObject)
                .filter(finding -> !NOT_LABELLED.contains(rule(finding)));
    }

    private static String rule(JsonObject finding) {
        return finding.get("rule").getAsString();
    }
}
