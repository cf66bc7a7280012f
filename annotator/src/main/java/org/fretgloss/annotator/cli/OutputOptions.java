package org.fretgloss.annotator.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a result goes, and how much is said on the way. */
final class OutputOptions {

    /** Standard input or output. */
    static final String DASH = "-";

    @Option(names = "-o", paramLabel = "OUT", description = "the file to write; - is standard output")
    @Nullable String out;

    @Option(names = "--replace", description = "an existing output may be replaced")
    boolean replace;

    @Option(names = "--quiet", description = "no summary and no notices")
    boolean quiet;

    @Option(names = "--trace", description = "show where in the program an error arose")
    boolean trace;

    @Option(names = "--help", usageHelp = true, description = "show this page")
    boolean help;

    @Option(names = "--version", versionHelp = true, description = "show the version")
    boolean version;

    /** {@code -o}, or a name beside the input: song.musicxml gives song-annotated.musicxml. */
    String target(String input, String suffix) {
        if (out != null) {
            return out;
        }
        return input.equals(DASH) ? DASH : beside(Path.of(input), suffix).toString();
    }

    private static Path beside(Path input, String suffix) {
        String name = String.valueOf(input.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String extension = dot > 0 ? name.substring(dot) : "";
        return input.resolveSibling(stem + suffix + extension);
    }
}
