package org.fretgloss.annotator.cli;

import picocli.CommandLine.Option;

/** What every command tells of itself. */
final class HelpOptions {

    @Option(names = "--help", usageHelp = true, description = "show this page")
    boolean help;

    @Option(names = "--version", versionHelp = true, description = "show the version")
    boolean version;
}
