package org.fretgloss.annotator.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Plain;
import org.fretgloss.annotator.file.ScoreFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes our lines out of a score again. */
@Command(
        name = "strip",
        versionProvider = TopCommand.OfVersion.class,
        description = "Writes a copy of an annotated score without our lines: the original file.")
final class StripCommand implements Callable<Integer>, ScoreCommand {

    private final Console console;

    @Parameters(paramLabel = "SCORE", description = "a .musicxml, .xml or .mxl file; - is standard input")
    String score = OutputOptions.DASH;

    @Mixin
    OutputOptions output = new OutputOptions();

    @Mixin
    CommonOptions common = new CommonOptions();

    StripCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        Results results = new Results(console, common.replace);
        ScoreFile file = results.read(score);
        String target = output.target(file, score, "-plain");
        results.checkTarget(target, file);
        Plain stripped = Fretgloss.strip(file);
        results.write(Map.of(target, stripped.bytes()));
        if (!common.quiet) {
            console.tell(score + " → " + target);
            stripped.notices().forEach(notice -> console.tell("  note: " + notice));
        }
        return ExitCode.DONE.number();
    }

    @Override
    public String score() {
        return score;
    }

    @Override
    public boolean isTraced() {
        return common.trace;
    }
}
