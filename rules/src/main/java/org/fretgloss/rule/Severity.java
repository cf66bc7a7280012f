package org.fretgloss.rule;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How much a doubt weighs, the worst first. */
public enum Severity {
    /** It cannot be right. */
    ERROR,
    /** Very likely a slip. */
    WARNING,
    /** Worth another look. */
    HINT;

    /** The severity of that name in lower case. */
    public static Optional<Severity> named(String name) {
        return Arrays.stream(values())
                .filter(severity -> severity.toString().equals(name))
                .findFirst();
    }

    /** Whether it weighs as much as another, or more. */
    public boolean isAtLeast(Severity other) {
        return compareTo(other) <= 0;
    }

    /** "error", "warning", "hint". */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
