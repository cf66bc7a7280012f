package org.fretgloss.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fretgloss.rule.Examination;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.RuleFailure;
import org.fretgloss.rule.RuleProvider;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.rule.Settings;

/** Runs the examples of a rule's page. Only that rule runs: no other rule absorbs a text of it. */
public final class PageExamples {

    private PageExamples() {}

    /**
     * Runs one example.
     *
     * @return what does not hold, each in a line; none where the example holds
     */
    public static List<String> run(Rule rule, PageExample example) {
        SoloText written;
        Settings settings;
        try {
            written = SoloText.parse(example.text());
            settings = Settings.of(rule, written.options());
        } catch (RuntimeException e) {
            return List.of("the example cannot be read: " + e.getMessage());
        }
        if (example.fires() == written.expectations().isEmpty()) {
            return List.of(
                    example.fires()
                            ? "the example says nowhere what must be found ('=> bar 1 beat 1: text')"
                            : "a silent example expects nothing");
        }
        Examination examination = Rulebook.of(only(rule)).examine(written.analysis(), Map.of(rule.id(), settings));
        return compare(written.expectations(), examination);
    }

    private static List<String> compare(List<Expectation> expected, Examination examination) {
        List<Expectation> found =
                examination.glosses().stream().map(Expectation::of).toList();
        List<String> mismatches = new ArrayList<>(
                examination.failures().stream().map(RuleFailure::message).toList());
        if (mismatches.isEmpty() && !found.equals(expected)) {
            mismatches.add("expected " + list(expected) + " but found " + list(found));
        }
        return mismatches;
    }

    private static String list(List<Expectation> lines) {
        return lines.isEmpty()
                ? "nothing"
                : lines.stream().map(line -> "\n  " + line).collect(Collectors.joining("", "", "\n"));
    }

    private static RuleProvider only(Rule rule) {
        return new RuleProvider() {
            @Override
            public String name() {
                return rule.getClass().getName();
            }

            @Override
            public int interfaceLevel() {
                return INTERFACE_LEVEL;
            }

            @Override
            public List<Rule> rules() {
                return List.of(rule);
            }
        };
    }
}
