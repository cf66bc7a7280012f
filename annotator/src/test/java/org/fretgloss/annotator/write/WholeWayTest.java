package org.fretgloss.annotator.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.rule.Line;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the writer promises, on every fixture and with every line that can be written. */
class WholeWayTest {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();
    private static final Pattern NOTE = Pattern.compile("<note\\b.*?</note>", Pattern.DOTALL);
    private static final Pattern OURS = Pattern.compile("<lyric number=\"(\\d+)\" name=\"fretgloss:([a-z]+)\">");
    private static final Pattern DOCTYPE = Pattern.compile("<!DOCTYPE[^>]*>");

    private static final Request EVERY_LINE = new Request(
            Request.PLAIN.part(),
            Request.PLAIN.given(),
            Request.PLAIN.lines(),
            List.of(Line.DEGREES, Line.CHORDS),
            Map.of("bend", Map.of("curls", "true")),
            Corrections.NONE,
            false,
            false);

    @TestFactory
    Stream<DynamicContainer> everyFixture() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("../fixtures"))) {
            return files.filter(file -> file.endsWith("score.musicxml")).sorted().toList().stream()
                    .map(score -> DynamicContainer.dynamicContainer(score.toString(), tests(score)));
        }
    }

    private static Stream<DynamicTest> tests(Path path) {
        try {
            byte[] original = Files.readAllBytes(path);
            ScoreFile score = ScoreFile.read(path);
            Annotated annotated = FRETGLOSS.annotate(score, EVERY_LINE);
            ScoreFile written = ScoreFile.of(path.toString(), annotated.bytes());
            return Stream.of(
                    dynamicTest(
                            "stripping gives the original back, byte for byte",
                            () -> assertThat(Fretgloss.strip(written).bytes()).isEqualTo(original)),
                    dynamicTest(
                            "annotating twice equals annotating once",
                            () -> assertThat(FRETGLOSS
                                            .annotate(written, EVERY_LINE)
                                            .bytes())
                                    .isEqualTo(annotated.bytes())),
                    dynamicTest(
                            "as XML, nothing but our elements is new",
                            () -> assertThat(OurElements.differencesBesides(
                                            withoutDoctype(score.text()), withoutDoctype(written.text())))
                                    .isEmpty()),
                    dynamicTest("valid stays valid", () -> {
                        assertThat(MusicXmlSchema.complaint(score.text())).isEmpty();
                        assertThat(MusicXmlSchema.complaint(written.text())).isEmpty();
                    }),
                    dynamicTest("lyrics stand where readers show them", () -> assertPlaces(written.text())));
        } catch (Exception e) {
            throw new AssertionError(path.toString(), e);
        }
    }

    /**
     * Never under rests, grace notes, further notes of a chord or tie continuations; in a pair of staves under the
     * first; one lyric a line; each line with one number.
     */
    private static void assertPlaces(String text) {
        boolean pair = text.contains("<staves>2</staves>");
        Map<String, String> numbers = new HashMap<>();
        int found = 0;
        for (MatchResult note : NOTE.matcher(text).results().toList()) {
            List<MatchResult> lyrics = OURS.matcher(note.group()).results().toList();
            if (lyrics.isEmpty()) {
                continue;
            }
            found += lyrics.size();
            assertThat(note.group())
                    .doesNotContain("<rest")
                    .doesNotContain("<grace")
                    .doesNotContain("<chord")
                    .doesNotContain("<tie type=\"stop\"");
            assertThat(lyrics).extracting(lyric -> lyric.group(2)).doesNotHaveDuplicates();
            if (pair) {
                assertThat(note.group()).contains("<staff>1</staff>");
            }
            lyrics.forEach(lyric -> assertThat(numbers.merge(lyric.group(2), lyric.group(1), (one, other) -> other))
                    .isEqualTo(lyric.group(1)));
        }
        assertThat(found).isPositive();
        assertThat(numbers.values()).doesNotHaveDuplicates().allMatch(number -> number.length() == 1);
    }

    private static String withoutDoctype(String text) {
        return DOCTYPE.matcher(text).replaceFirst("");
    }
}
