package org.fretgloss.page;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.rule.Option;

/**
 * The options section of a page: a table of four columns, name, default, range and meaning, or the word "None." where
 * the rule declares no option of its own.
 */
final class OptionTable {

    private static final String NONE = "None.";
    private static final List<String> HEADING = List.of("option", "default", "range", "meaning");

    private OptionTable() {}

    /** How the section differs from the declared options; nothing where it does not. */
    static Stream<String> differences(String section, List<Option<?>> declared) {
        if (declared.isEmpty()) {
            return section.equals(NONE)
                    ? Stream.empty()
                    : Stream.of("the rule declares no option: the options section should read '" + NONE + "'");
        }
        List<List<String>> expected = Stream.concat(
                        Stream.of(HEADING), declared.stream().map(OptionTable::row))
                .toList();
        List<List<String>> rows = rows(section);
        return rows.equals(expected)
                ? Stream.empty()
                : Stream.of(
                        "the options section should hold the table\n" + print(expected) + "\nand not\n" + print(rows));
    }

    private static List<String> row(Option<?> option) {
        return List.of("`" + option.name() + "`", option.byDefault().toString(), option.range(), option.meaning());
    }

    private static List<List<String>> rows(String section) {
        return section.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("|") && !line.matches("[|:\\s-]+"))
                .map(OptionTable::cells)
                .toList();
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.replaceAll("^\\||\\|$", "").split("\\|", -1))
                .map(String::strip)
                .toList();
    }

    private static String print(List<List<String>> rows) {
        return String.join(
                "\n",
                rows.stream().map(row -> "| " + String.join(" | ", row) + " |").toList());
    }
}
