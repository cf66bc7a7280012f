package org.fretgloss.annotator.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.write.SelfCheckException;
import org.fretgloss.rule.SettingException;
import picocli.CommandLine;

/** What went wrong, in one line; where in the program only when asked. */
final class Failures {

    private Failures() {}

    static int tell(Console console, Exception failure, CommandLine failed) {
        if (failed.getCommand() instanceof ScoreCommand command) {
            return tell(console, failure, command.score(), command.isTraced()).number();
        }
        console.tell("fretgloss: " + sentence(failure));
        return exitCode(failure).number();
    }

    /** Tells what went wrong with one score, and gives the exit code that it asks for. */
    static ExitCode tell(Console console, Exception failure, String score, boolean traced) {
        console.tell("fretgloss: " + (score.isBlank() ? "'" + score + "'" : score) + ": " + sentence(failure));
        if (traced) {
            StringWriter trace = new StringWriter();
            failure.printStackTrace(new PrintWriter(trace));
            trace.toString().lines().map(line -> line.replace("\t", "    ")).forEach(console::tell);
        }
        return exitCode(failure);
    }

    private static String sentence(Exception failure) {
        if (isUsersToMend(failure) || failure instanceof SelfCheckException) {
            return String.valueOf(failure.getMessage());
        }
        return "failed inside (" + failure + "); please report it with --trace";
    }

    private static ExitCode exitCode(Exception failure) {
        return isUsersToMend(failure) ? ExitCode.BAD_INPUT : ExitCode.REFUSED;
    }

    private static boolean isUsersToMend(Exception failure) {
        return failure instanceof ScoreException || failure instanceof SettingException;
    }
}
