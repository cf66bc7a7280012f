package org.fretgloss.annotator.config;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.names.Nearest;
import org.fretgloss.neck.StringFret;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * The text of a corrections file, in TOML 1.0:
 *
 * <pre>
 * [[accepted]]
 * rule = "wrong-box"
 * bar = "5"
 * beat = "7/2"
 * string = 2
 * fret = 9
 * notes = "03f1c25a9d7e4b86"
 * </pre>
 */
final class CorrectionsToml {

    private static final String ACCEPTED = "accepted";
    private static final String HEADED = "each entry begins with [[accepted]] on a line of its own";
    private static final List<String> TEXTS = List.of("rule", "bar", "beat", "notes");
    private static final List<String> NUMBERS = List.of("string", "fret");

    private CorrectionsToml() {}

    /**
     * Reads it.
     *
     * @throws ScoreException if it is not TOML, or holds a key or a value that means nothing here; the message names the
     *     line
     */
    static Corrections read(String text) throws ScoreException {
        TomlParseResult toml = Toml.parse(text);
        if (toml.hasErrors()) {
            TomlParseError error = toml.errors().get(0);
            throw new ScoreException(in(Optional.of(error.position()))
                    + "this is not TOML; mend it after the pattern of the other lines, such as bar = \"3\"");
        }
        checkKeys(toml, List.of(ACCEPTED));
        if (!toml.contains(ACCEPTED)) {
            return Corrections.NONE;
        }
        if (!(toml.get(List.of(ACCEPTED)) instanceof TomlArray entries)) {
            throw wrong(toml, ACCEPTED, HEADED);
        }
        List<Accepted> accepted = new ArrayList<>();
        for (Object entry : entries.toList()) {
            if (!(entry instanceof TomlTable table)) {
                throw wrong(toml, ACCEPTED, HEADED);
            }
            accepted.add(entry(table));
        }
        return new Corrections(accepted);
    }

    private static Accepted entry(TomlTable table) throws ScoreException {
        List<String> known = new ArrayList<>(TEXTS);
        known.addAll(NUMBERS);
        checkKeys(table, known);
        return new Accepted(
                text(table, "rule"), text(table, "bar"), text(table, "beat"), place(table), text(table, "notes"));
    }

    private static Optional<StringFret> place(TomlTable table) throws ScoreException {
        if (table.contains("string") != table.contains("fret")) {
            throw wrong(table, table.contains("string") ? "string" : "fret", "string and fret belong together");
        }
        return table.contains("string")
                ? Optional.of(new StringFret(number(table, "string"), number(table, "fret")))
                : Optional.empty();
    }

    private static String text(TomlTable table, String key) throws ScoreException {
        if (table.get(List.of(key)) instanceof String text) {
            return text;
        }
        if (!table.contains(key)) {
            throw new ScoreException(
                    in(table.keySet().stream().findFirst().map(first -> table.inputPositionOf(List.of(first))))
                            + "this entry has no '" + key + "'");
        }
        throw wrong(table, key, "write it in quotation marks");
    }

    private static int number(TomlTable table, String key) throws ScoreException {
        if (table.get(List.of(key)) instanceof Long number && number >= 0 && number <= Byte.MAX_VALUE) {
            return Math.toIntExact(number);
        }
        throw wrong(table, key, "write a whole number from 0 to " + Byte.MAX_VALUE);
    }

    private static void checkKeys(TomlTable table, List<String> known) throws ScoreException {
        Set<Map.Entry<String, Object>> entries = table.entrySet();
        for (Map.Entry<String, Object> entry : entries) {
            if (!known.contains(entry.getKey())) {
                throw wrong(table, entry.getKey(), "there is no such key; " + Nearest.hint(entry.getKey(), known));
            }
        }
    }

    private static ScoreException wrong(TomlTable table, String key, String sentence) {
        return new ScoreException(
                in(Optional.ofNullable(table.inputPositionOf(List.of(key)))) + "'" + key + "': " + sentence);
    }

    private static String in(Optional<TomlPosition> position) {
        return position.map(place -> "line " + place.line() + ": ").orElse("");
    }

    /** An entry as it is written at the end of a file. */
    static String write(Accepted accepted) {
        StringBuilder text = new StringBuilder("\n[[accepted]]\n");
        text.append("rule = ").append(quoted(accepted.rule())).append('\n');
        text.append("bar = ").append(quoted(accepted.bar())).append('\n');
        text.append("beat = ").append(quoted(accepted.beat())).append('\n');
        accepted.at()
                .ifPresent(at -> text.append("string = ")
                        .append(at.string())
                        .append("\nfret = ")
                        .append(at.fret())
                        .append('\n'));
        return text.append("notes = ")
                .append(quoted(accepted.notes()))
                .append('\n')
                .toString();
    }

    /** A basic string: what a score calls its bars may hold anything. */
    private static String quoted(String text) {
        return '"' + Toml.tomlEscape(text).toString() + '"';
    }
}
