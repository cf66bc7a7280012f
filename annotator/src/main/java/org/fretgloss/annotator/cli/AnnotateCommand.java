package org.fretgloss.annotator.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.config.CorrectionsFile;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.report.FindingsJson;
import org.fretgloss.annotator.report.Summary;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a copy of a score with our lines in it. */
@Command(
        name = "annotate",
        versionProvider = TopCommand.OfVersion.class,
        description = "Writes a copy of a score with teaching lines in it: box, bends, thirds, chord outlines, outside"
                + " notes, space. Nothing else in the file changes, and 'strip' takes the lines out again.",
        footer = {
            "",
            "Wide bends, stretches and repetition can hurt: warm up, stop if it hurts,",
            "and ask a teacher or a physician.",
            "Sharing a transcription of somebody's recording can need the rights",
            "holder's leave."
        })
final class AnnotateCommand implements Callable<Integer>, ScoreCommand {

    private final Console console;
    private final Supplier<Fretgloss> tool;

    @Spec
    @Nullable CommandSpec spec;

    @Parameters(paramLabel = "SCORE", description = "a .musicxml, .xml or .mxl file; - is standard input")
    String score = OutputOptions.DASH;

    @Mixin
    OutputOptions output = new OutputOptions();

    @Mixin
    CommonOptions common = new CommonOptions();

    @Mixin
    MusicOptions music = new MusicOptions();

    @Mixin
    FindingsOption findings = new FindingsOption();

    @Option(names = "--all-notes", description = "list every note with what is known of it among the findings")
    boolean allNotes;

    AnnotateCommand(Console console, Supplier<Fretgloss> tool) {
        this.console = console;
        this.tool = tool;
    }

    @Override
    public Integer call() throws Exception {
        Fretgloss fretgloss = tool.get();
        checkUsage(fretgloss);
        Results results = new Results(console, common.replace);
        ScoreFile file = results.read(score);
        String target = output.target(file, score, "-annotated");
        if (findings.clashWith(target).isPresent()) {
            throw usage(findings.clashWith(target).get());
        }
        results.checkTarget(target, file);
        if (findings.target().isPresent()) {
            results.checkTarget(findings.target().get());
        }
        Annotated annotated = fretgloss.annotate(file, request());
        Map<String, byte[]> written = new LinkedHashMap<>();
        written.put(target, annotated.bytes());
        findings.target().ifPresent(name -> written.put(name, json(annotated).getBytes(StandardCharsets.UTF_8)));
        results.write(written);
        report(annotated, target);
        return (annotated.failures().isEmpty() ? ExitCode.DONE : ExitCode.RULE_FAILED).number();
    }

    private void checkUsage(Fretgloss fretgloss) throws ScoreException, IOException {
        if (findings.goToStandardOutput() && output.isStandardOutput(score)) {
            throw usage("the score and the findings cannot both go to standard output: give one of them a file");
        }
        if (allNotes && findings.target().isEmpty()) {
            throw usage("--all-notes adds to the findings: say with --findings where they go");
        }
        Optional<String> complaint = music.complaint(fretgloss.rules());
        if (complaint.isPresent()) {
            throw usage(complaint.get());
        }
        Optional<String> clash = findings.clashWith(score);
        if (clash.isPresent()) {
            throw usage(clash.get());
        }
    }

    private String json(Annotated annotated) {
        return allNotes ? FindingsJson.withAllNotes(annotated) : FindingsJson.of(annotated);
    }

    /** What the teacher let stand is asked for only where doubts are written. */
    private Request request() throws ScoreException {
        Request request = music.request();
        boolean decided = music.writesDoubts() && !score.equals(OutputOptions.DASH);
        return decided ? request.with(CorrectionsFile.beside(Path.of(score)).read()) : request;
    }

    private ParameterException usage(String sentence) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), sentence);
    }

    private void report(Annotated annotated, String target) {
        annotated.failures().forEach(failure -> console.tell("fretgloss: " + score + ": " + failure.message()));
        if (common.quiet) {
            return;
        }
        console.tell(score + " → " + target);
        Summary.of(annotated).forEach(line -> console.tell("  " + line));
        annotated.notices().forEach(notice -> console.tell("  note: " + notice));
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
