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
import java.util.stream.Stream;
import org.fretgloss.annotator.Fretgloss;
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

    private static List<String> expected(Path expectation) throws IOException {
        return Files.readAllLines(expectation).stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toList();
    }

    private static Stream<DynamicTest> tests(Path expectation) {
        try {
            List<String> expected = expected(expectation);
            Path score = scoreBeside(expectation);
            if (expected.get(0).startsWith(REFUSED)) {
                return Stream.of(dynamicTest("is refused", () -> assertRefused(score, expected)));
            }
            return Stream.of(
                    dynamicTest("reads as written down by hand", () -> assertReads(score, expected)),
                    dynamicTest("is kept whole", () -> kept(score)));
        } catch (IOException e) {
            throw new AssertionError(expectation.toString(), e);
        }
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

    private static void assertReads(Path score, List<String> expected) throws ScoreException {
        ScoreFile file = ScoreFile.read(score);
        Reading reading = ScoreReader.read(file, Optional.empty());
        assertThat(ReadingText.of(reading.solo()))
                .isEqualTo(expected.stream()
                        .filter(line -> !line.startsWith(NOTICE))
                        .toList());

        List<String> notices = new ArrayList<>(file.notices());
        reading.notices().stream().map(Notice::text).forEach(notices::add);
        List<String> fragments = expected.stream()
                .filter(line -> line.startsWith(NOTICE))
                .map(line -> line.substring(NOTICE.length()))
                .toList();
        assertThat(notices)
                .zipSatisfy(fragments, (notice, fragment) -> assertThat(notice).contains(fragment));
    }

    private static void assertRefused(Path score, List<String> expected) {
        assertThat(expected).hasSize(1);
        assertThatThrownBy(() -> ScoreReader.read(ScoreFile.read(score), Optional.empty()))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining(expected.get(0).substring(REFUSED.length()));
    }

    /** How many of the scores that are read are valid MusicXML 4.0: nearly all, or 'valid stays valid' says little. */
    @Test
    void mostAreValid() throws IOException {
        List<Path> invalid = new ArrayList<>();
        int read = 0;
        for (Path expectation : expectations()) {
            if (!expected(expectation).get(0).startsWith(REFUSED)) {
                read++;
                Path score = scoreBeside(expectation);
                if (!kept(score).isValid()) {
                    invalid.add(FOLDER.relativize(score));
                }
            }
        }
        System.out.println("reading fixtures: " + read + " read, not valid: " + invalid);
        assertThat(invalid).hasSizeLessThan(read / 5);
    }

    private static Kept kept(Path score) throws IOException {
        try {
            return Kept.check(FRETGLOSS, score.toString(), Files.readAllBytes(score));
        } catch (ScoreException e) {
            throw new AssertionError(score.toString(), e);
        }
    }
}
