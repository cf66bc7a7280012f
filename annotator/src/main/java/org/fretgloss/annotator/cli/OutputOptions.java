package org.fretgloss.annotator.cli;

import java.nio.file.Path;
import org.fretgloss.annotator.file.Container;
import org.fretgloss.annotator.file.ScoreFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a score goes. */
final class OutputOptions {

    /** Standard input or output. */
    static final String DASH = "-";

    @Option(names = "-o", paramLabel = "OUT", description = "the file to write; - is standard output")
    @Nullable String out;

    /** Whether the result goes to standard output, as that of standard input does where nothing else is said. */
    boolean isStandardOutput(String input) {
        return DASH.equals(out) || (out == null && DASH.equals(input));
    }

    /**
     * {@code -o}, or a name beside the input: song.musicxml gives song-annotated.musicxml. Where the input's name belies
     * what it lies in, the ending is the true one.
     */
    String target(ScoreFile score, String input, String suffix) {
        if (out != null) {
            return out;
        }
        return input.equals(DASH)
                ? DASH
                : beside(Path.of(input), suffix, score.container()).toString();
    }

    private static Path beside(Path input, String suffix, Container container) {
        String name = String.valueOf(input.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        return input.resolveSibling(stem + suffix + (container.isDeniedBy(name) ? container.ending() : ending));
    }
}
