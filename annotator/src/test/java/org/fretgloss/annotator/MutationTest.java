package org.fretgloss.annotator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.generated.GeneratedScore;
import org.fretgloss.annotator.generated.Packing;
import org.fretgloss.annotator.report.FindingsJson;
import org.fretgloss.annotator.report.Summary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever is done to a score, the answer is an annotated score or one clear line; never another exception. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class MutationTest {

    private static final int MUTANTS = Integer.getInteger("fretgloss.mutants", 3_000);

    /** Of so many mutants one is made from a fixture, which is longer than a made-up score. */
    private static final int FIXTURE_EVERY = 8;

    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    @Test
    void endsInAScoreOrInAClearLine() throws IOException {
        List<String> fixtures = new ArrayList<>();
        for (Path score : fixtures()) {
            fixtures.add(Files.readString(score));
        }
        Map<String, Integer> ends = new TreeMap<>();
        LongStream.range(0, MUTANTS).parallel().forEach(seed -> {
            String text = seed % FIXTURE_EVERY == 0
                    ? fixtures.get((int) (seed / FIXTURE_EVERY % fixtures.size()))
                    : GeneratedScore.of(seed).text();
            Mutator mutator = new Mutator(seed);
            Mutator.Harm harm = mutator.harm();
            String end = harm + " " + end(harm + " mutant " + seed, bytes(mutator, harm, text, seed));
            synchronized (ends) {
                ends.merge(end, 1, Integer::sum);
            }
        });
        System.out.println("mutants: " + ends);
        for (Mutator.Harm harm : Mutator.Harm.values()) {
            assertThat(ends.keySet()).anyMatch(end -> end.startsWith(harm + " "));
        }
        for (String end : List.of("annotated", "refused")) {
            assertThat(ends.entrySet().stream()
                            .filter(entry -> entry.getKey().endsWith(end))
                            .mapToInt(Map.Entry::getValue)
                            .sum())
                    .isGreaterThan(MUTANTS / 10);
        }
    }

    private static byte[] bytes(Mutator mutator, Mutator.Harm harm, String text, long seed) {
        return harm == Mutator.Harm.ARCHIVE_BYTES_FLIPPED
                ? mutator.flipped(
                        new Packing("", StandardCharsets.UTF_8, false, Packing.Archive.USUAL).pack(text, seed))
                : mutator.mutate(harm, text);
    }

    private static String end(String name, byte[] mutant) {
        long start = System.nanoTime();
        try {
            ScoreFile score = ScoreFile.of(name, mutant);
            Annotated annotated = FRETGLOSS.annotate(score, Request.PLAIN);
            ScoreFile again = ScoreFile.of(name, annotated.bytes());
            assertThat(annotated.failures()).as(name).isEmpty();
            ScoreFile stripped = ScoreFile.of(name, Fretgloss.strip(again).bytes());
            assertThat(stripped.text()).as(name).isEqualTo(score.text());
            if (!score.isCompressed()) {
                // The records of a damaged archive may be mended on the way.
                assertThat(stripped.withText(stripped.text())).as(name).isEqualTo(mutant);
            }
            assertThat(FindingsJson.of(annotated)).as(name).doesNotContainPattern(": -?(NaN|Infinity)");
            assertThat(Summary.of(annotated))
                    .as(name)
                    .allMatch(line -> line.lines().count() == 1);
            return "annotated";
        } catch (ScoreException e) {
            assertThat(e.getMessage()).as(name).isNotBlank().doesNotContain("\n", "Exception");
            return "refused";
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            throw new AssertionError(name, e);
        } finally {
            assertThat(Duration.ofNanos(System.nanoTime() - start)).as(name).isLessThan(LONGEST);
        }
    }

    private static List<Path> fixtures() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("../fixtures"))) {
            return files.filter(file -> file.endsWith("score.musicxml"))
                    .sorted()
                    .toList();
        }
    }
}
