package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The small scores of {@code fixtures/reading}, one for each way of writing that exporters have, held against readings
 * written by hand; and each of them annotated and stripped again.
 */
class ReadingFixturesTest {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();
    private static final Path FOLDER = Path.of("..", "fixtures", "reading");
    private static final String NOTICE = "notice ";
    private static final String REFUSED = "refused ";
    private static final String PART = "--part ";

    /** Where a notice says that something stands. */
    private static final Pattern PLACE = Pattern.compile(" ?\\(((\\d+ times, first in )?bar \\S+)\\)$");

    @TestFactory
    Stream<DynamicContainer> everyVariant() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files
                    .filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .map(file -> DynamicContainer.dynamicContainer(
                            FOLDER.relativize(file).toString(), tests(file)))
                    .toList()
                    .stream();
        }
    }

    private static Stream<DynamicTest> tests(Path expectation) {
        try {
            List<String> lines = Files.readAllLines(expectation).stream()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
            Optional<String> part = said(lines, PART).findFirst();
            List<String> expected =
                    lines.stream().filter(line -> !line.startsWith(PART)).toList();
            Path score = scoreBeside(expectation);
            if (expected.get(0).startsWith(REFUSED)) {
                return Stream.of(dynamicTest("is refused", () -> assertRefused(score, part, expected)));
            }
            return Stream.of(
                    dynamicTest("reads as written down by hand", () -> assertReads(score, part, expected)),
                    dynamicTest("is kept whole", () -> assertKept(score, part)));
        } catch (IOException e) {
            throw new AssertionError(expectation.toString(), e);
        }
    }

    /** What stands behind a word, in each line that begins with it. */
    private static Stream<String> said(List<String> lines, String word) {
        return lines.stream().filter(line -> line.startsWith(word)).map(line -> line.substring(word.length()));
    }

    private static Path scoreBeside(Path expectation) throws IOException {
        String name = expectation.getFileName().toString().replaceFirst("\\.txt$", "");
        try (Stream<Path> files = Files.list(expectation.resolveSibling(""))) {
            return files.filter(
                            file -> file.getFileName().toString().matches("\\Q" + name + "\\E\\.(musicxml|xml|mxl)"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(expectation + " has no score beside it"));
        }
    }

    private static void assertReads(Path score, Optional<String> part, List<String> expected) throws ScoreException {
        ScoreFile file = ScoreFile.read(score);
        Reading reading = ScoreReader.read(file, part);
        assertThat(ReadingText.of(reading))
                .isEqualTo(expected.stream()
                        .filter(line -> !line.startsWith(NOTICE))
                        .toList());

        List<String> notices = new ArrayList<>(file.notices());
        reading.notices().stream().map(Notice::text).forEach(notices::add);
        assertThat(notices).zipSatisfy(said(expected, NOTICE).toList(), ReadingFixturesTest::assertSays);
    }

    private static void assertSays(String notice, String expected) {
        assertThat(PLACE.matcher(notice).replaceFirst(""))
                .contains(PLACE.matcher(expected).replaceFirst(""));
        assertThat(place(notice)).as(notice).isEqualTo(place(expected));
    }

    private static String place(String notice) {
        Matcher place = PLACE.matcher(notice);
        return place.find() ? place.group(1) : "";
    }

    private static void assertRefused(Path score, Optional<String> part, List<String> expected) {
        assertThat(expected).hasSize(1);
        assertThatThrownBy(() -> ScoreReader.read(ScoreFile.read(score), part))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining(expected.get(0).substring(REFUSED.length()));
    }

    private static void assertKept(Path score, Optional<String> part) throws Exception {
        Request request = new Request(part, Given.NOTHING);
        ScoreFile file = ScoreFile.read(score);
        Annotated annotated = FRETGLOSS.annotate(file, request);
        ScoreFile written = ScoreFile.of(score.toString(), annotated.bytes());

        assertThat(Fretgloss.strip(written).bytes()).isEqualTo(Files.readAllBytes(score));
        assertThat(FRETGLOSS.annotate(written, request).bytes()).isEqualTo(annotated.bytes());
        assertThat(isMadeByInsertionsOnly(file.text(), written.text())).isTrue();
    }

    /** Whether all characters of a text stand in another in the same order. */
    private static boolean isMadeByInsertionsOnly(String original, String longer) {
        int next = 0;
        for (int i = 0; i < longer.length() && next < original.length(); i++) {
            if (longer.charAt(i) == original.charAt(next)) {
                next++;
            }
        }
        return next == original.length();
    }
}
