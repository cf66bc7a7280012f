package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.marks.BuiltInMarks;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.RuleProvider;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A rule of somebody else's that breaks must not cost the teacher the others' findings. */
class FailingRuleTest {

    private static final Path SCORE = Path.of("../fixtures/plain-clothes/score.musicxml");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** Breaks at once. */
    private static final class Brittle implements Rule {
        @Override
        public Line line() {
            return Line.NOTES;
        }

        @Override
        public Stream<Finding> examine(Analysis analysis, Settings settings) {
            throw new IllegalStateException("out of ideas");
        }
    }

    private static final class Provider implements RuleProvider {
        @Override
        public String name() {
            return "Somebody's rules";
        }

        @Override
        public int interfaceLevel() {
            return INTERFACE_LEVEL;
        }

        @Override
        public List<Rule> rules() {
            List<Rule> rules = new ArrayList<>();
            rules.add(new Brittle());
            return rules;
        }
    }

    @Test
    void theFileIsWrittenAndTheUserIsTold() throws Exception {
        Fretgloss fretgloss = Fretgloss.with(Rulebook.of(new BuiltInMarks(), new Provider()));
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = Console.of(new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream(), err);
        Path out = folder.resolve("out.musicxml");
        int exit = new CommandLine(new AnnotateCommand(console, () -> fretgloss))
                .execute(SCORE.toString(), "-o", out.toString(), "--quiet");
        assertThat(exit).isEqualTo(3);
        assertThat(Files.readString(out)).contains("fretgloss:box");
        assertThat(err.toString(StandardCharsets.UTF_8).lines())
                .singleElement()
                .asString()
                .contains("brittle", "Somebody's rules", "out of ideas")
                .doesNotContain("\tat ");
    }
}
