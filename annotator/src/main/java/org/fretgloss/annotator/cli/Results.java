package org.fretgloss.annotator.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.file.WholeFile;

/** Where a command's input comes from and its results go: files, or {@code -} for the standard streams. */
final class Results {

    private final Console console;
    private final boolean replace;

    Results(Console console, boolean replace) {
        this.console = console;
        this.replace = replace;
    }

    ScoreFile read(String score) throws ScoreException, IOException {
        return score.equals(OutputOptions.DASH)
                ? ScoreFile.of("standard input", console.in().readAllBytes())
                : ScoreFile.read(path(score));
    }

    /** Refuses a target that could not be written, before the work is done. */
    void checkTarget(String target) throws ScoreException {
        if (!target.equals(OutputOptions.DASH)) {
            WholeFile.check(path(target), replace);
        }
    }

    /** The same for a score, which stays in the container of its input. */
    void checkTarget(String target, ScoreFile score) throws ScoreException {
        String name = target.toLowerCase(Locale.ROOT);
        boolean saysCompressed = name.endsWith(".mxl");
        boolean saysPlain = name.endsWith(".musicxml") || name.endsWith(".xml");
        if (score.isCompressed() ? saysPlain : saysCompressed) {
            throw new ScoreException("the output " + target + " cannot be written: the input is "
                    + (score.isCompressed()
                            ? "a compressed score, so name it .mxl"
                            : "not compressed, so name it .musicxml"));
        }
        checkTarget(target);
    }

    void write(String target, byte[] bytes) throws ScoreException, IOException {
        if (target.equals(OutputOptions.DASH)) {
            console.out().write(bytes);
            console.out().flush();
        } else {
            WholeFile.write(path(target), bytes, replace);
        }
    }

    /** Writes the score and then the findings; where these fail, a score that was not there before goes again. */
    void writeBoth(Result score, Optional<Result> findings) throws ScoreException, IOException {
        boolean isNew = !score.target.equals(OutputOptions.DASH) && Files.notExists(path(score.target));
        write(score.target, score.bytes);
        if (findings.isPresent()) {
            try {
                write(findings.get().target, findings.get().bytes);
            } catch (ScoreException | IOException e) {
                if (isNew) {
                    Files.deleteIfExists(path(score.target));
                }
                throw e;
            }
        }
    }

    /** What goes where. */
    static final class Result {

        private final String target;
        private final byte[] bytes;

        Result(String target, byte[] bytes) {
            this.target = target;
            this.bytes = bytes;
        }
    }

    private static Path path(String name) throws ScoreException {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new ScoreException("'" + name + "' cannot be the name of a file", e);
        }
    }
}
