package org.fretgloss.rule;

import java.util.List;

/** A rule's option that is not declared, or a text that is no value for it. */
public final class SettingException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String given;
    private final transient List<String> known;

    private SettingException(String message, String given, List<String> known, Throwable cause) {
        super(message, cause);
        this.given = given;
        this.known = List.copyOf(known);
    }

    static SettingException unknown(String name, List<String> known) {
        return new SettingException("no option '" + name + "'", name, known, new IllegalArgumentException(name));
    }

    static SettingException badValue(Option<?> option, String text, Throwable cause) {
        return new SettingException(
                "option '" + option.name() + "' takes " + option.range() + ", not '" + text + "'",
                option.name(),
                List.of(),
                cause);
    }

    /** The same, naming the rule. */
    SettingException of(Rule rule) {
        return new SettingException("rule '" + rule.id() + "': " + getMessage(), given, known, this);
    }

    /** The name as it was given. */
    public String given() {
        return given;
    }

    /** The names that could have been meant; empty where the name was right and the value wrong. */
    public List<String> known() {
        return known;
    }
}
