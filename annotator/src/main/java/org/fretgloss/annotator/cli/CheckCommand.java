package org.fretgloss.annotator.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fretgloss.annotator.Checked;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.config.Accepted;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.annotator.config.CorrectionsFile;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.names.Nearest;
import org.fretgloss.annotator.report.FindingsJson;
import org.fretgloss.annotator.report.ProofSheet;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Severity;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proof-reads scores and reports. */
@Command(
        name = "check",
        versionProvider = TopCommand.OfVersion.class,
        description = "Reads a transcription as a careful colleague would: what looks wrong, where, why, and what was"
                + " probably meant. The score is not changed; mend it where it was written, and export it again.")
final class CheckCommand implements Callable<Integer> {

    private final Console console;
    private final Supplier<Fretgloss> tool;

    @Spec
    @Nullable CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "SCORE",
            description = "one or more .musicxml, .xml or .mxl files; - is standard input")
    List<String> scores = new ArrayList<>();

    @Mixin
    MusicGiven music = new MusicGiven();

    @Option(
            names = "--only",
            split = ",",
            paramLabel = "CHECK",
            description = "only these checks; 'fretgloss rules' lists them")
    List<String> only = new ArrayList<>();

    @Option(names = "--skip", split = ",", paramLabel = "CHECK", description = "all but these checks")
    List<String> skipped = new ArrayList<>();

    @Option(
            names = "--min-severity",
            paramLabel = "SEVERITY",
            converter = Converters.OfSeverity.class,
            description = "the least that is shown: error, warning (usual) or hint")
    Severity least = Severity.WARNING;

    @Option(
            names = "--accept",
            description = "let what is shown stand: it is written into NAME.corrections.toml beside the score,"
                    + " and is silent until the notes around it change")
    boolean accept;

    @Mixin
    FindingsOption findings = new FindingsOption();

    @Mixin
    CommonOptions common = new CommonOptions();

    CheckCommand(Console console, Supplier<Fretgloss> tool) {
        this.console = console;
        this.tool = tool;
    }

    @Override
    public Integer call() throws Exception {
        Fretgloss fretgloss = tool.get();
        checkUsage(fretgloss);
        ExitCode worst = ExitCode.DONE;
        for (String score : scores) {
            worst = ExitCode.worse(worst, checked(fretgloss, score));
        }
        return worst.number();
    }

    private void checkUsage(Fretgloss fretgloss) throws ScoreException, IOException {
        List<String> known =
                fretgloss.rules().stream().filter(Rule::isCheck).map(Rule::id).toList();
        Set<String> named = new LinkedHashSet<>(only);
        named.addAll(skipped);
        for (String name : named) {
            if (!known.contains(name)) {
                throw usage("'" + name + "' is no check; " + Nearest.hint(name, known));
            }
        }
        if (fretgloss.rules().stream().noneMatch(rule -> rule.isCheck() && isAsked(rule))) {
            throw usage("no check is left: what --only names, --skip leaves out");
        }
        if (findings.target().isPresent() && scores.size() > 1) {
            throw usage("--findings takes the findings of one score: check the scores one by one");
        }
        for (String score : scores) {
            Optional<String> clash = findings.clashWith(score);
            if (clash.isPresent()) {
                throw usage(clash.get());
            }
        }
        if (accept && scores.contains(OutputOptions.DASH)) {
            throw usage("--accept writes beside the score, and standard input has no place: name a file");
        }
        Optional<String> complaint = music.complaint(fretgloss.rules());
        if (complaint.isPresent()) {
            throw usage(complaint.get());
        }
    }

    private ExitCode checked(Fretgloss fretgloss, String score) {
        try {
            return check(fretgloss, score);
        } catch (Exception e) {
            return Failures.tell(console, e, score, common.trace);
        }
    }

    private ExitCode check(Fretgloss fretgloss, String score) throws ScoreException, IOException {
        Results results = new Results(console, common.replace);
        ScoreFile file = results.read(score);
        if (findings.target().isPresent()) {
            results.checkTarget(findings.target().get());
        }
        Optional<CorrectionsFile> corrections = score.equals(OutputOptions.DASH)
                ? Optional.empty()
                : Optional.of(CorrectionsFile.beside(Path.of(score)));
        Request request = music.request().with(decided(corrections));
        Checked checked = fretgloss.check(file, request, this::isAsked).from(least);
        if (findings.target().isPresent()) {
            results.write(
                    Map.of(findings.target().get(), FindingsJson.of(checked).getBytes(StandardCharsets.UTF_8)));
        }
        if (accept) {
            accept(checked, corrections.orElseThrow());
        }
        report(checked, score);
        return exitCode(checked);
    }

    private static Corrections decided(Optional<CorrectionsFile> file) throws ScoreException {
        return file.isPresent() ? file.get().read() : Corrections.NONE;
    }

    private boolean isAsked(Rule rule) {
        return (only.isEmpty() || only.contains(rule.id())) && !skipped.contains(rule.id());
    }

    private void accept(Checked checked, CorrectionsFile file) throws ScoreException {
        int added = file.accept(checked.glosses().stream()
                .map(doubt -> Accepted.of(checked.analysis().solo(), doubt))
                .toList());
        if (!common.quiet) {
            console.tell(
                    added == 0
                            ? "nothing new to accept in " + file.path()
                            : added + (added == 1 ? " doubt" : " doubts") + " accepted in " + file.path());
        }
    }

    private void report(Checked checked, String score) throws IOException {
        checked.failures().forEach(failure -> console.tell("fretgloss: " + score + ": " + failure.message()));
        if (!findings.goToStandardOutput()) {
            ProofSheet sheet = new ProofSheet(CheckCommand::painted);
            List<String> lines = accept ? sheet.ofAccepted(checked) : sheet.of(checked);
            String text = String.join("\n", lines) + "\n";
            console.out().write(text.getBytes(StandardCharsets.UTF_8));
            console.out().flush();
        }
        if (!common.quiet) {
            String before = scores.size() == 1 ? "  note: " : score + ": note: ";
            checked.notices().forEach(notice -> console.tell(before + notice));
        }
    }

    /** In colour on a terminal, unless NO_COLOR is set; picocli looks after both. */
    private static String painted(Severity severity, String word) {
        String style = switch (severity) {
            case ERROR -> "bold,red";
            case WARNING -> "yellow";
            case HINT -> "faint";
        };
        return Ansi.AUTO.string("@|" + style + " " + word + "|@");
    }

    private ExitCode exitCode(Checked checked) {
        if (!checked.failures().isEmpty()) {
            return ExitCode.RULE_FAILED;
        }
        boolean open = !accept && checked.count(Severity.ERROR) + checked.count(Severity.WARNING) > 0;
        return open ? ExitCode.FOUND : ExitCode.DONE;
    }

    private ParameterException usage(String sentence) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), sentence);
    }
}
