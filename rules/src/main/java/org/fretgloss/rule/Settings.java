package org.fretgloss.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The values of one rule's options: what was set, and the declared defaults for the rest. */
public final class Settings {

    private final Map<String, Object> values;

    private Settings(Map<String, Object> values) {
        this.values = Map.copyOf(values);
    }

    /** Every option at its default. */
    public static Settings defaults() {
        return new Settings(Map.of());
    }

    /**
     * Reads the texts set for a rule: its own options, and the threshold that every rule has.
     *
     * @param texts option name to text
     * @throws SettingException if a name is not declared, or a text is no value of its option
     */
    public static Settings of(Rule rule, Map<String, String> texts) {
        List<Option<?>> declared = new ArrayList<>(rule.options());
        declared.add(Rule.THRESHOLD);
        try {
            return read(declared, texts);
        } catch (SettingException e) {
            throw e.of(rule);
        }
    }

    /**
     * Reads the texts set for a rule.
     *
     * @param declared all options of the rule
     * @param texts option name to text
     * @throws SettingException if a name is not declared, or a text is no value of its option
     */
    public static Settings read(List<Option<?>> declared, Map<String, String> texts) {
        Map<String, Object> values = new HashMap<>();
        texts.forEach((name, text) -> {
            Option<?> option = declared.stream()
                    .filter(candidate -> candidate.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> SettingException.unknown(
                            name, declared.stream().map(Option::name).toList()));
            values.put(name, valueOf(option, text));
        });
        return new Settings(values);
    }

    private static Object valueOf(Option<?> option, String text) {
        try {
            return option.reader().apply(text.trim());
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw SettingException.badValue(option, text, e);
        }
    }

    public <T> T get(Option<T> option) {
        Object value = values.get(option.name());
        return value == null ? option.byDefault() : option.type().cast(value);
    }
}
