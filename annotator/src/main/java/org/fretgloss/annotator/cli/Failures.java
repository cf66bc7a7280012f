package org.fretgloss.annotator.cli;

import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.write.SelfCheckException;
import org.fretgloss.rule.SettingException;
import picocli.CommandLine;

/** What went wrong, in one line; where in the program only when asked. */
final class Failures {

    private Failures() {}

    static int tell(Console console, Exception failure, CommandLine failed) {
        if (failed.getCommand() instanceof ScoreCommand command) {
            console.tell("fretgloss: " + command.score() + ": " + sentence(failure));
            if (command.isTraced()) {
                failure.printStackTrace(console.err());
            }
        } else {
            console.tell("fretgloss: " + sentence(failure));
        }
        return exitCode(failure).number();
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
