package org.fretgloss.annotator.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/**
 * How found marks differ from expected ones, a line for each, as a musician would say it. Two findings are the same mark
 * where they are of one rule and begin on one note.
 *
 * <p>A finding's explanation and confidence are not held, nor by how much a climax stands out.
 */
final class FindingsDiff {

    private static final String MISSING = "missing: ";
    private static final String UNEXPECTED = "unexpected: ";
    private static final String DIFFERENT = "different: ";

    private static final List<String> HELD =
            List.of("note", "lastNote", "carrier", "bar", "beat", "string", "fret", "line", "text");

    /** How many marks are missing, unexpected, or found with another text or value. */
    record Counts(int missing, int unexpected, int different) {}

    private final List<JsonObject> unmatched;
    private final List<String> lines = new ArrayList<>();

    private FindingsDiff(List<JsonObject> found) {
        this.unmatched = new ArrayList<>(found);
    }

    /** The differences between the marks of one rule; empty where there are none. */
    static List<String> between(List<JsonObject> expected, List<JsonObject> found) {
        FindingsDiff diff = new FindingsDiff(found);
        expected.forEach(diff::look);
        diff.unmatched.forEach(finding -> diff.lines.add(UNEXPECTED + inWords(finding)));
        return diff.lines;
    }

    /** How many lines of each sort {@link #between} gives. */
    static Counts count(List<JsonObject> expected, List<JsonObject> found) {
        List<String> lines = between(expected, found);
        return new Counts(starting(MISSING, lines), starting(UNEXPECTED, lines), starting(DIFFERENT, lines));
    }

    private static int starting(String sort, List<String> lines) {
        return (int) lines.stream().filter(line -> line.startsWith(sort)).count();
    }

    private void look(JsonObject expectation) {
        Optional<JsonObject> match = unmatched.stream()
                .filter(finding -> finding.get("note").equals(expectation.get("note")))
                .findFirst();
        if (match.isEmpty()) {
            lines.add(MISSING + inWords(expectation));
            return;
        }
        unmatched.remove(match.get());
        List<String> differences = differences(expectation, match.get());
        if (!differences.isEmpty()) {
            lines.add(DIFFERENT + inWords(expectation) + ": " + String.join("; ", differences));
        }
    }

    private static List<String> differences(JsonObject expectation, JsonObject finding) {
        List<String> differences = new ArrayList<>();
        HELD.forEach(key -> compare(key, valueOf(key, expectation), valueOf(key, finding), differences));
        Map<String, JsonElement> expected = heldValues(expectation);
        Map<String, JsonElement> found = heldValues(finding);
        Stream.concat(expected.keySet().stream(), found.keySet().stream())
                .distinct()
                .forEach(name -> compare(
                        name,
                        expected.getOrDefault(name, JsonNull.INSTANCE),
                        found.getOrDefault(name, JsonNull.INSTANCE),
                        differences));
        return differences;
    }

    private static void compare(String key, JsonElement expected, JsonElement found, List<String> differences) {
        if (!expected.equals(found)) {
            differences.add(key + " should be " + expected + " and is " + found);
        }
    }

    /** An expectation leaves the last note out where the mark ends on the note it begins on. */
    private static JsonElement valueOf(String key, JsonObject finding) {
        String given = key.equals("lastNote") && !finding.has(key) ? "note" : key;
        return Optional.ofNullable(finding.get(given)).orElse(JsonNull.INSTANCE);
    }

    private static Map<String, JsonElement> heldValues(JsonObject finding) {
        Map<String, JsonElement> values = finding.getAsJsonObject("values").asMap();
        return finding.get("rule").getAsString().equals("climax") ? Map.of("bars", values.get("bars")) : values;
    }

    /** Such as: bar 5 beat 3½ (note 41), bend "full 4→5" [kind "bend", ...]. */
    private static String inWords(JsonObject finding) {
        JsonObject values = finding.getAsJsonObject("values");
        return "bar " + finding.get("bar").getAsString() + " beat "
                + Glyphs.of(Fraction.parse(finding.get("beat").getAsString())) + " (note " + finding.get("note") + "), "
                + finding.get("rule").getAsString() + " " + finding.get("text") + " "
                + new TreeSet<>(values.keySet())
                        .stream().map(name -> name + " " + values.get(name)).toList();
    }
}
