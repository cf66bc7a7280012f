package org.fretgloss.annotator.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** What the command's exit code says. */
enum ExitCode {
    DONE(0, "done"),
    FOUND(1, "a check found errors or warnings, or an example of a rule does not hold"),
    BAD_INPUT(2, "bad input or usage; nothing was written for that score"),
    RULE_FAILED(3, "a rule failed; the findings of the others were kept and the file was written"),
    REFUSED(4, "the tool refused its own output or failed inside; nothing was written");

    private final int number;
    private final String sentence;

    ExitCode(int number, String sentence) {
        this.number = number;
        this.sentence = sentence;
    }

    /** Of several scores the worst tells: 4, 2, 3, 1. */
    private static final List<ExitCode> WORST_FIRST = List.of(REFUSED, BAD_INPUT, RULE_FAILED, FOUND, DONE);

    /** The worse of two. */
    static ExitCode worse(ExitCode one, ExitCode other) {
        return WORST_FIRST.indexOf(one) < WORST_FIRST.indexOf(other) ? one : other;
    }

    int number() {
        return number;
    }

    /** All of them for the help page, a line each: "  2  bad input or usage; ...". */
    static String[] table() {
        return Stream.concat(
                        Stream.of("", "Exit codes:"),
                        Arrays.stream(values()).map(code -> "  " + code.number + "  " + code.sentence))
                .toArray(String[]::new);
    }
}
