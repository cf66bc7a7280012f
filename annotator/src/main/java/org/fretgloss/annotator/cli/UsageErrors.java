package org.fretgloss.annotator.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;

/** What is wrong with a command's words, in one line. */
final class UsageErrors {

    /** How the library introduces an option's bad value: "Invalid value for option '--lines' (LINE): ...". */
    private static final Pattern BAD_VALUE = Pattern.compile("^Invalid value for option '(--?[a-z-]+)'[^:]*: ");

    private UsageErrors() {}

    static String sentence(ParameterException e) {
        if (e instanceof MutuallyExclusiveArgsException) {
            return "the chords come from --chords or from --form: give one of the two";
        }
        String message = String.valueOf(e.getMessage()).replaceAll("\\R", " ");
        return BAD_VALUE.matcher(message).replaceFirst("$1: ");
    }
}
