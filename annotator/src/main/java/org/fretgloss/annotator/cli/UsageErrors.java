package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fretgloss.annotator.names.Nearest;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command's words, in one line. */
final class UsageErrors {

    /** How the library introduces an option's bad value: "Invalid value for option '--lines' (LINE): ...". */
    private static final Pattern BAD_VALUE = Pattern.compile("^Invalid value for option '(--?[a-z-]+)'[^:]*: ");

    private static final Pattern BAD_SWITCH = Pattern.compile("^'.*' is not a boolean$");

    /** How the library's own command 'help' says that it knows no command of that name. */
    private static final Pattern UNKNOWN_COMMAND = Pattern.compile("^Unknown subcommand '(.*)'\\.$");

    private UsageErrors() {}

    static String sentence(ParameterException e) {
        if (e instanceof MutuallyExclusiveArgsException || e instanceof MaxValuesExceededException) {
            return "the chords come from one --chords or one --form: give only one";
        }
        if (e instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice: give it once";
        }
        if (e instanceof MissingParameterException missing) {
            return missing(missing.getMissing());
        }
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        return badValue(e);
    }

    private static String missing(List<ArgSpec> missing) {
        ArgSpec first = missing.get(0);
        return first.isOption()
                ? name(first) + " needs a value: " + first.paramLabel()
                : "the " + first.paramLabel() + " is missing: " + String.join("", first.description());
    }

    private static String unmatched(UnmatchedArgumentException e) {
        String word = e.getUnmatched().get(0);
        CommandLine command = e.getCommandLine();
        CommandSpec spec = command.getCommandSpec();
        if (e.isUnknownOption()) {
            return "there is no option '" + word + "'"
                    + Nearest.of(word, spec.optionsMap().keySet())
                            .map(name -> "; did you mean '" + name + "'?")
                            .orElse("");
        }
        if (!command.getSubcommands().isEmpty()) {
            return unknownCommand(word, command);
        }
        return "'" + word + "' is a word too many: " + spec.name() + " takes one "
                + spec.positionalParameters().get(0).paramLabel() + ", and a value with spaces in it stands in quotes";
    }

    private static String unknownCommand(String word, CommandLine command) {
        return "there is no command '" + word + "'; "
                + Nearest.hint(word, command.getSubcommands().keySet());
    }

    private static String badValue(ParameterException e) {
        String message = String.valueOf(e.getMessage()).replaceAll("\\R", " ");
        Matcher unknown = UNKNOWN_COMMAND.matcher(message);
        if (unknown.matches()) {
            return unknownCommand(unknown.group(1), e.getCommandLine());
        }
        Matcher bad = BAD_VALUE.matcher(message);
        if (!bad.find()) {
            return message;
        }
        String reason = message.substring(bad.end());
        return BAD_SWITCH.matcher(reason).matches() ? bad.group(1) + " takes no value" : bad.group(1) + ": " + reason;
    }

    private static String name(@Nullable ArgSpec argument) {
        return argument instanceof OptionSpec option
                ? option.longestName()
                : Objects.requireNonNull(argument).paramLabel();
    }
}
