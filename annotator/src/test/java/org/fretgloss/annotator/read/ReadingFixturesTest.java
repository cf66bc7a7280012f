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
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.check.Kept;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
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
    private static final Pattern PLACE = Pattern.compile(" ?\\(((\\d+ times, first in )?bar \\S+( of [^)]+)?)\\)$");

    @TestFactory
    Stream<DynamicContainer> everyVariant() throws IOException {
        return expectations().stream()
                .map(file -> DynamicContainer.dynamicContainer(
                        FOLDER.relativize(file).toString(), tests(file)));
    }

    private static List<Path> expectations() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .toList();
        }
    }

    /**
     * What was written by hand about a score.
     *
     * @param part the part that is asked for
     * @param lines the reading, the notices, or the refusal
     */
    private record Expected(Path score, Optional<String> part, List<String> lines) {

        static Expected of(Path expectation) throws IOException {
            List<String> lines = Files.readAllLines(expectation).stream()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
            return new Expected(
                    scoreBeside(expectation),
                    said(lines, PART).findFirst(),
                    lines.stream().filter(line -> !line.startsWith(PART)).toList());
        }

        boolean isRefusal() {
            return lines.get(0).startsWith(REFUSED);
        }
    }

    private static Stream<DynamicTest> tests(Path expectation) {
        try {
            Expected expected = Expected.of(expectation);
            if (expected.isRefusal()) {
                return Stream.of(dynamicTest("is refused", () -> assertRefused(expected)));
            }
            return Stream.of(
                    dynamicTest("reads as written down by hand", () -> assertReads(expected)),
                    dynamicTest("is kept whole", () -> kept(expected)));
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

    private static void assertReads(Expected expected) throws ScoreException {
        ScoreFile file = ScoreFile.read(expected.score());
        Reading reading = ScoreReader.read(file, expected.part());
        assertThat(ReadingText.of(reading))
                .isEqualTo(expected.lines().stream()
                        .filter(line -> !line.startsWith(NOTICE))
                        .toList());

        List<String> notices = new ArrayList<>(file.notices());
        reading.notices().stream().map(Notice::text).forEach(notices::add);
        assertThat(notices).zipSatisfy(said(expected.lines(), NOTICE).toList(), ReadingFixturesTest::assertSays);
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

    private static void assertRefused(Expected expected) {
        assertThat(expected.lines()).hasSize(1);
        assertThatThrownBy(() -> ScoreReader.read(ScoreFile.read(expected.score()), expected.part()))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining(expected.lines().get(0).substring(REFUSED.length()));
    }

    /** How many of the scores that are read are valid MusicXML 4.0: nearly all, or 'valid stays valid' says little. */
    @Test
    void mostAreValid() throws IOException {
        List<Path> invalid = new ArrayList<>();
        int read = 0;
        for (Path expectation : expectations()) {
            Expected expected = Expected.of(expectation);
            if (!expected.isRefusal()) {
                read++;
                if (!kept(expected).isValid()) {
                    invalid.add(FOLDER.relativize(expected.score()));
                }
            }
        }
        System.out.println("reading fixtures: " + read + " read, not valid: " + invalid);
        assertThat(invalid).hasSizeLessThan(read / 5);
    }

    private static Kept kept(Expected expected) throws IOException {
        Path score = expected.score();
        try {
            return Kept.check(
                    FRETGLOSS,
                    score.toString(),
                    Files.readAllBytes(score),
                    new Request(expected.part(), Given.NOTHING));
        } catch (ScoreException e) {
            throw new AssertionError(score.toString(), e);
        }
    }
}
