package org.fretgloss.annotator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.junit.jupiter.api.Test;

/** Whatever is done to a score, the answer is an annotated score or one clear line; never another exception. */
class MutationTest {

    private static final int MUTANTS_EACH = Integer.getInteger("fretgloss.mutants", 300);
    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    @Test
    void endsInAScoreOrInAClearLine() throws IOException {
        Map<String, Integer> ends = new TreeMap<>();
        for (Path score : fixtures()) {
            String text = Files.readString(score);
            for (long seed = 0; seed < MUTANTS_EACH; seed++) {
                byte[] mutant = new Mutator(seed).mutate(text);
                String name = score + " mutant " + seed;
                ends.merge(end(name, mutant), 1, Integer::sum);
            }
        }
        System.out.println("mutants: " + ends);
        assertThat(ends.keySet()).containsOnly("annotated", "refused");
        assertThat(ends).allSatisfy((end, count) -> assertThat(count).isGreaterThan(MUTANTS_EACH / 10));
    }

    private static String end(String name, byte[] mutant) {
        try {
            ScoreFile score = ScoreFile.of(name, mutant);
            Annotated annotated = FRETGLOSS.annotate(score, Request.PLAIN);
            ScoreFile again = ScoreFile.of(name, annotated.bytes());
            assertThat(annotated.failures()).as(name).isEmpty();
            assertThat(Fretgloss.strip(again).bytes()).as(name).isEqualTo(mutant);
            return "annotated";
        } catch (ScoreException e) {
            assertThat(e.getMessage())
                    .as(name)
                    .isNotBlank()
                    .doesNotContain("\n")
                    .doesNotContain("Exception");
            return "refused";
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(
                    name + ": " + new String(mutant, StandardCharsets.UTF_8).length() + " characters", e);
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
