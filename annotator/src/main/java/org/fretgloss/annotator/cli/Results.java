package org.fretgloss.annotator.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fretgloss.annotator.file.Container;
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
                ? ScoreFile.read("standard input", console.in())
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
        Container container = score.container();
        if (container.isDeniedBy(target)) {
            throw new ScoreException("the output " + target + " cannot be written: the input is " + container
                    + (container.isDeniedBy(score.name()) ? " (though its name says otherwise)" : "")
                    + ", so name the output " + container.ending());
        }
        checkTarget(target);
    }

    /** Whether two names are of one file, though they may be spelled differently; a dash is no file. */
    static boolean areOneFile(String name, String other) throws ScoreException, IOException {
        if (name.equals(OutputOptions.DASH) || other.equals(OutputOptions.DASH)) {
            return false;
        }
        Path one = path(name).toAbsolutePath().normalize();
        Path two = path(other).toAbsolutePath().normalize();
        return one.equals(two) || (Files.exists(one) && Files.exists(two) && Files.isSameFile(one, two));
    }

    /** Writes every result under its name, or none where one of them cannot be written. */
    void write(Map<String, byte[]> results) throws ScoreException, IOException {
        List<WholeFile> files = new ArrayList<>();
        try {
            for (Map.Entry<String, byte[]> result : results.entrySet()) {
                if (!result.getKey().equals(OutputOptions.DASH)) {
                    files.add(WholeFile.prepare(path(result.getKey()), result.getValue(), replace));
                }
            }
            for (WholeFile file : files) {
                file.place();
            }
        } finally {
            for (WholeFile file : files) {
                file.close();
            }
        }
        if (results.containsKey(OutputOptions.DASH)) {
            console.out().write(results.get(OutputOptions.DASH));
            console.out().flush();
        }
    }

    private static Path path(String name) throws ScoreException {
        if (name.isBlank()) {
            throw new ScoreException("an empty name is no file's: name a file, or - for the standard streams");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new ScoreException("'" + name + "' cannot be the name of a file", e);
        }
    }
}
