package org.fretgloss.annotator.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every command on scores takes. */
final class CommonOptions {

    @Option(names = "--replace", description = "an existing output may be replaced")
    boolean replace;

    @Option(names = "--quiet", description = "no summary and no notices")
    boolean quiet;

    @Option(names = "--trace", description = "show where in the program an error arose")
    boolean trace;

    @Mixin
    HelpOptions help = new HelpOptions();
}
