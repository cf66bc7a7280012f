package org.fretgloss.annotator.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fretgloss.annotator.cli.Difference.Sort;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/**
 * How found marks differ from expected ones. Two findings are the same mark
 * where they are of one rule and begin on one note.
 *
 * <p>A finding's explanation and confidence are not held, nor by how much a climax stands out.
 */
final class FindingsDiff {

    private static final List<String> HELD =
            List.of("note", "lastNote", "carrier", "bar", "beat", "string", "fret", "line", "text");

    private final List<JsonObject> unmatched;
    private final List<Difference> differences = new ArrayList<>();

    private FindingsDiff(List<JsonObject> found) {
        this.unmatched = new ArrayList<>(found);
    }

    /** The differences between the marks of one rule; empty where there are none. */
    static List<Difference> between(List<JsonObject> expected, List<JsonObject> found) {
        FindingsDiff diff = new FindingsDiff(found);
        expected.forEach(diff::look);
        diff.unmatched.forEach(finding -> diff.add(Sort.UNEXPECTED, finding));
        return diff.differences;
    }

    private void look(JsonObject expectation) {
        Optional<JsonObject> match = unmatched.stream()
                .filter(finding -> finding.get("note").equals(expectation.get("note")))
                .findFirst();
        if (match.isEmpty()) {
            add(Sort.MISSING, expectation);
            return;
        }
        unmatched.remove(match.get());
        Map<String, String> unequal = unequal(expectation, match.get());
        if (!unequal.isEmpty()) {
            add(Sort.DIFFERENT, expectation, unequal);
        }
    }

    private void add(Sort sort, JsonObject mark) {
        add(sort, mark, Map.of());
    }

    private void add(Sort sort, JsonObject mark, Map<String, String> unequal) {
        String explanation =
                unequal.isEmpty() ? inWords(mark) : inWords(mark) + ": " + String.join("; ", unequal.values());
        differences.add(new Difference(
                sort,
                mark.get("note").getAsInt(),
                mark.get("rule").getAsString(),
                List.copyOf(unequal.keySet()),
                explanation));
    }

    /** By key what it should be and is. */
    private static Map<String, String> unequal(JsonObject expectation, JsonObject finding) {
        Map<String, String> unequal = new LinkedHashMap<>();
        HELD.forEach(key -> compare(key, valueOf(key, expectation), valueOf(key, finding), unequal));
        Map<String, JsonElement> expected = heldValues(expectation);
        Map<String, JsonElement> found = heldValues(finding);
        Stream.concat(expected.keySet().stream(), found.keySet().stream())
                .distinct()
                .forEach(name -> compare(
                        name,
                        expected.getOrDefault(name, JsonNull.INSTANCE),
                        found.getOrDefault(name, JsonNull.INSTANCE),
                        unequal));
        return unequal;
    }

    private static void compare(String key, JsonElement expected, JsonElement found, Map<String, String> unequal) {
        if (!expected.equals(found)) {
            unequal.put(key, key + " should be " + expected + " and is " + found);
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
