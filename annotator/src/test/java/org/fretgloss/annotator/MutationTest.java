package org.fretgloss.annotator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.fretgloss.annotator.check.Xml;
import org.fretgloss.annotator.file.Container;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.generated.Mutant;
import org.fretgloss.annotator.generated.Mutants;
import org.fretgloss.annotator.generated.Mutator;
import org.fretgloss.annotator.report.FindingsJson;
import org.fretgloss.annotator.report.Summary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever is done to a score, the answer is an annotated score or one clear line; never another exception. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class MutationTest {

    private static final int MUTANTS = Integer.getInteger("fretgloss.mutants", 3_000);
    private static final Duration LONGEST = Duration.ofSeconds(20);

    /** Where it is: a line or a bar of the text. */
    private static final Pattern A_PLACE = Pattern.compile("line \\d+|\\bbar '?[-\\dX]");

    /** Where damage is in an archive: in one of its entries, or in what keeps it together. */
    private static final Pattern IN_AN_ARCHIVE = Pattern.compile(
            "'[^']+' (is damaged|is encrypted or packed|is missing|unpacks)|META-INF/container.xml|this compressed score is"
                    + " damaged|the archive");

    /** What is wrong with a score as a whole stands nowhere. */
    private static final Pattern NOWHERE =
            Pattern.compile("^(the score has no notes|'[^']+' has no notes|this is no MusicXML file|the file is empty"
                    + "|the part's own lyrics take|its encoding, )");

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    @Test
    void endsInAScoreOrInAClearLine() throws IOException {
        Mutants mutants = Mutants.with(Path.of("../fixtures"));
        Map<String, Integer> ends = new TreeMap<>();
        LongStream.range(0, MUTANTS).parallel().mapToObj(mutants::of).forEach(mutant -> {
            String end = end(mutant);
            synchronized (ends) {
                for (Object kind :
                        List.of(mutant.harm(), mutant.origin(), mutant.packing().archive(), "ALL")) {
                    ends.merge(kind + " " + end, 1, Integer::sum);
                }
            }
        });
        System.out.println("mutants: " + ends);
        for (Mutator.Harm harm : Mutator.Harm.values()) {
            assertThat(ends).containsKeys(harm + " annotated", harm + " refused");
        }
        assertThat(ends.get("ALL annotated")).isGreaterThan(MUTANTS / 10);
        assertThat(ends.get("ALL refused")).isGreaterThan(MUTANTS / 10);
    }

    private static String end(Mutant mutant) {
        String name = mutant.toString();
        long start = System.nanoTime();
        try {
            byte[] file = mutant.file();
            ScoreFile score = ScoreFile.of(name, file);
            Annotated annotated = FRETGLOSS.annotate(score, Request.PLAIN);
            ScoreFile again = ScoreFile.of(name, annotated.bytes());
            assertThat(annotated.failures()).as(name).isEmpty();
            ScoreFile stripped = ScoreFile.of(name, Fretgloss.strip(again).bytes());
            assertThat(stripped.text()).as(name).isEqualTo(score.text());
            if (score.container() == Container.PLAIN) {
                // The records of a damaged archive may be mended on the way.
                assertThat(stripped.withText(stripped.text())).as(name).isEqualTo(file);
            }
            assertThat(FindingsJson.of(annotated)).as(name).doesNotContainPattern(": -?(NaN|Infinity)");
            assertThat(Summary.of(annotated))
                    .as(name)
                    .allMatch(line -> line.lines().count() == 1);
            return "annotated";
        } catch (ScoreException e) {
            assertThat(e.getMessage()).as(name).isNotBlank().doesNotContain("\n", "Exception");
            assertTellsWhere(mutant, String.valueOf(e.getMessage()));
            return "refused";
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            throw new AssertionError(name, e);
        } finally {
            assertThat(Duration.ofNanos(System.nanoTime() - start)).as(name).isLessThan(LONGEST);
        }
    }

    /** Damage of a text has a line; any other refusal a place or a reason that is of the whole. */
    private static void assertTellsWhere(Mutant mutant, String message) {
        if (isMalformed(mutant)) {
            assertThat(message).as(mutant.toString()).containsPattern("line \\d+|this is no MusicXML file");
        } else if (mutant.isPlain()) {
            assertThat(message).as(mutant.toString()).containsPattern(A_PLACE + "|" + NOWHERE);
        } else {
            assertThat(message).as(mutant.toString()).containsPattern(A_PLACE + "|" + NOWHERE + "|" + IN_AN_ARCHIVE);
        }
    }

    private static boolean isMalformed(Mutant mutant) {
        try {
            return !Xml.isWellFormed(
                    ScoreFile.of(mutant.toString(), mutant.file()).text());
        } catch (ScoreException e) {
            return false;
        }
    }
}
