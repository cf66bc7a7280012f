package org.fretgloss.annotator.cli;

import java.util.Objects;
import org.fretgloss.annotator.Version;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command without a subcommand: it can only explain itself. */
@Command(
        name = "fretgloss",
        mixinStandardHelpOptions = true,
        versionProvider = TopCommand.OfVersion.class,
        subcommands = {
            AnnotateCommand.class,
            StripCommand.class,
            CheckCommand.class,
            RulesCommand.class,
            HelpCommand.class
        },
        synopsisSubcommandLabel = "COMMAND",
        description = "Explains a transcribed guitar solo in lyric lines, in the MusicXML file itself.")
final class TopCommand implements Runnable {

    @Spec
    @Nullable CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(), "a command is missing: annotate, strip, check or rules");
    }

    /** "fretgloss 0.1.0". */
    static final class OfVersion implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"fretgloss " + Version.NUMBER};
        }
    }
}
