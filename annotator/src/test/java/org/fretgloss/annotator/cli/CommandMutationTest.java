package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.generated.Mutant;
import org.fretgloss.annotator.generated.Mutants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a score, a command ends in whole files, or in one line that names the score, and no file. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class CommandMutationTest {

    private static final int MUTANTS = Integer.getInteger("fretgloss.commandMutants", 400);

    /** Other seeds than those of the mutants that do not go through the command. */
    private static final long FIRST = 1_000_000;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @Test
    void annotateWritesWholeFilesOrNone() throws IOException {
        Map<String, Integer> ends = ends(FIRST, MUTANTS, this::annotate);

        System.out.println("mutants annotated by the command, by exit code: " + ends);
        assertThat(ends.keySet()).containsExactly("0", "2");
        assertThat(ends.values()).allSatisfy(count -> assertThat(count).isGreaterThan(MUTANTS / 10));
    }

    @Test
    void checkWritesNothing() throws IOException {
        Map<String, Integer> ends = ends(FIRST + MUTANTS, MUTANTS / 4, this::check);

        System.out.println("mutants checked by the command, by exit code: " + ends);
        assertThat(ends.keySet()).containsExactly("0", "1", "2");
    }

    private interface Trial {
        Session of(Mutant mutant, Path score) throws IOException;
    }

    private Map<String, Integer> ends(long first, int count, Trial trial) throws IOException {
        Mutants mutants = Mutants.with(Path.of("../fixtures"));
        Map<String, Integer> ends = new TreeMap<>();
        LongStream.range(first, first + count).parallel().mapToObj(mutants::of).forEach(mutant -> {
            Session session = tried(mutant, trial);
            synchronized (ends) {
                ends.merge(String.valueOf(session.exit()), 1, Integer::sum);
            }
        });
        return ends;
    }

    private Session tried(Mutant mutant, Trial trial) {
        try {
            Path own = Files.createDirectory(folder.resolve(String.valueOf(mutant.seed())));
            Path score = Files.write(own.resolve(mutant.isPlain() ? "solo.musicxml" : "solo.mxl"), mutant.file());
            Session session = trial.of(mutant, score);
            assertThat(session.err())
                    .as(mutant.toString())
                    .doesNotContain("\tat ", "    at ", "Exception", "Error")
                    .doesNotContainPattern("[\\p{Cntrl}&&[^\\n]]");
            assertThat(score).as(mutant.toString()).hasBinaryContent(mutant.file());
            if (session.exit() == ExitCode.BAD_INPUT.number()) {
                assertRefused(mutant, score, session);
            }
            return session;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertRefused(Mutant mutant, Path score, Session session) throws IOException {
        assertThat(session.err().lines())
                .as(mutant.toString())
                .singleElement()
                .asString()
                .matches("fretgloss: \\Q" + score + "\\E: \\S+ \\S+.*");
        assertThat(session.text()).as(mutant.toString()).isEmpty();
        assertThat(filesBeside(score)).as(mutant.toString()).containsExactly(name(score));
    }

    private Session annotate(Mutant mutant, Path score) throws IOException {
        Path findings = score.resolveSibling("solo.json");

        Session session = Session.run("annotate", score.toString(), "--findings", findings.toString());

        assertThat(session.exit()).as(mutant + ": " + session.err()).isIn(0, 2);
        if (session.exit() == ExitCode.DONE.number()) {
            Path annotated = score.resolveSibling(name(score).replace("solo.", "solo-annotated."));
            assertThat(filesBeside(score))
                    .as(mutant.toString())
                    .containsExactlyInAnyOrder(name(score), name(annotated), name(findings));
            assertStripsBack(mutant, annotated, score);
            assertThat(Files.readString(findings)).startsWith("{").endsWith("}\n");
        }
        return session;
    }

    private Session check(Mutant mutant, Path score) throws IOException {
        Session session = Session.run("check", score.toString());

        assertThat(session.exit()).as(mutant + ": " + session.err()).isIn(0, 1, 2);
        assertThat(filesBeside(score)).as(mutant.toString()).containsExactly(name(score));
        return session;
    }

    private static List<String> filesBeside(Path score) throws IOException {
        try (Stream<Path> files = Files.list(score.resolveSibling(""))) {
            return files.map(CommandMutationTest::name).toList();
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    /** To its bytes; of an archive whose records are damaged, which are mended on the way, to its score's bytes. */
    private static void assertStripsBack(Mutant mutant, Path annotated, Path score) throws IOException {
        Path stripped = score.resolveSibling("stripped" + name(score).substring("solo".length()));
        Session session = Session.run("strip", annotated.toString(), "-o", stripped.toString(), "--quiet");
        assertThat(session.exit()).as(mutant + ": " + session.err()).isZero();
        if (mutant.isPlain() || !mutant.harm().needsArchive()) {
            assertThat(stripped).as(mutant.toString()).hasSameBinaryContentAs(score);
        } else {
            assertThat(text(stripped)).as(mutant.toString()).isEqualTo(text(score));
        }
        Files.delete(stripped);
    }

    private static String text(Path score) {
        try {
            return ScoreFile.read(score).text();
        } catch (ScoreException e) {
            throw new AssertionError(score.toString(), e);
        }
    }
}
