package org.fretgloss.annotator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.generated.GeneratedScore;
import org.fretgloss.annotator.generated.Packing;
import org.fretgloss.annotator.write.MusicXmlSchema;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The whole way, from bytes to bytes, on made-up scores in all containers: nothing is lost and nothing is changed. */
class LosslessTest {

    private static final int SCORES = Integer.getInteger("fretgloss.scores", 2_100);
    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    @Test
    @DisplayName("stripping gives the bytes back, only insertions are made, valid stays valid, twice is once")
    void keepsEveryByte() {
        Map<String, Integer> seen = new TreeMap<>();
        LongStream.range(0, SCORES).parallel().forEach(seed -> {
            Packing packing = Packing.of(seed);
            boolean annotated = check(seed, packing);
            synchronized (seen) {
                seen.merge(annotated ? "with lines" : "without", 1, Integer::sum);
                seen.merge(packing.archive().toString(), 1, Integer::sum);
                seen.merge(packing.declared() + " is " + packing.charset(), 1, Integer::sum);
            }
        });
        System.out.println("made-up scores: " + seen);
        assertThat(seen.get("with lines")).isGreaterThan(SCORES * 9 / 10);
    }

    /** Whether the score got any lines. */
    private static boolean check(long seed, Packing packing) {
        GeneratedScore score = GeneratedScore.of(seed);
        String name = "seed " + seed + ", " + packing;
        byte[] bytes = packing.pack(score.text(), seed);
        try {
            ScoreFile file = ScoreFile.of(name, bytes);
            Annotated once = FRETGLOSS.annotate(file, Request.PLAIN);
            byte[] output = once.bytes();
            ScoreFile written = ScoreFile.of(name, output);

            assertThat(once.failures()).as(name).isEmpty();
            assertThat(Fretgloss.strip(written).bytes()).as(name).isEqualTo(bytes);
            assertThat(FRETGLOSS.annotate(written, Request.PLAIN).bytes())
                    .as(name)
                    .isEqualTo(output);
            assertThat(isMadeByInsertionsOnly(file.text(), written.text()))
                    .as(name)
                    .isTrue();
            if (!score.prefixed()) {
                assertValid(name, file.text());
                assertValid(name, written.text());
            }
            return written.text().length() > file.text().length();
        } catch (ScoreException e) {
            throw new AssertionError(name, e);
        }
    }

    private static void assertValid(String name, String text) {
        assertThatCode(() -> MusicXmlSchema.validate(text)).as(name).doesNotThrowAnyException();
    }

    /** Whether all characters of a text stand in another in the same order. */
    private static boolean isMadeByInsertionsOnly(String original, String longer) {
        int next = 0;
        for (int i = 0; i < longer.length() && next < original.length(); i++) {
            next += longer.charAt(i) == original.charAt(next) ? 1 : 0;
        }
        return next == original.length();
    }

    @Test
    @DisplayName("the made-up scores are as different as the properties need")
    void areVaried() {
        String all = String.join(
                "",
                IntStream.range(0, 300)
                        .mapToObj(seed -> GeneratedScore.of(seed).text())
                        .toList());

        assertThat(all)
                .contains("score-timewise", "<grace", "<chord", "<tuplet", "<tied", "<repeat", "<harmony", "<lyric")
                .contains("<release", "<pre-bend", "<with-bar", "<hammer-on", "<pull-off", "<slide", "<wavy-line")
                .contains("<staves", "TAB", "implicit", "<play", "<identification/>", "<miscellaneous/>", "<m:note")
                .contains("<!DOCTYPE", "<!-- <note>", "<?keep", "CDATA", "&#", "&amp;", "\r\n", "\t<", "\r  <");
    }
}
