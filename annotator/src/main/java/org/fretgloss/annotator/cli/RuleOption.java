package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.SettingException;
import org.fretgloss.rule.Settings;

/**
 * An option of the command line that sets one of a rule.
 *
 * @param name as it is given: "--space"
 * @param rule the rule's id
 * @param option the rule's option
 * @param unit what its number counts, and an example
 */
record RuleOption(String name, String rule, String option, String unit) {

    /** What does not suit the rule; none where the text is a value of its option. */
    Optional<String> complaint(String text, List<Rule> rules) {
        return rules.stream()
                .filter(known -> known.id().equals(rule))
                .flatMap(known -> known.options().stream())
                .filter(known -> known.name().equals(option))
                .findFirst()
                .filter(known -> !takes(known, text))
                .map(known -> name + " takes " + known.range() + " " + unit + ", and not '" + text + "'");
    }

    /** Rule id to option name to text. */
    Map<String, Map<String, String>> set(String text) {
        return Map.of(rule, Map.of(option, text));
    }

    private static boolean takes(Option<?> option, String text) {
        try {
            Settings.read(List.of(option), Map.of(option.name(), text));
            return true;
        } catch (SettingException e) {
            return false;
        }
    }
}
