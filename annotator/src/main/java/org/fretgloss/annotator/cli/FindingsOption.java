package org.fretgloss.annotator.cli;

import java.io.IOException;
import java.util.Optional;
import org.fretgloss.annotator.file.ScoreException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where findings go. */
final class FindingsOption {

    @Option(names = "--findings", paramLabel = "FILE", description = "write the findings as JSON; - is standard output")
    @Nullable String file;

    /** A file's name or a dash; none where nobody asks for findings. */
    Optional<String> target() {
        return Optional.ofNullable(file);
    }

    boolean goToStandardOutput() {
        return OutputOptions.DASH.equals(file);
    }

    /** What is wrong where the findings would be written over a score. */
    Optional<String> clashWith(String score) throws ScoreException, IOException {
        return file != null && Results.areOneFile(file, score)
                ? Optional.of("the findings cannot go into the score " + file + ": give them a file of their own")
                : Optional.empty();
    }
}
