package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever befalls a score, it is read or refused with one clear line; no other exception leaves the reader. */
class DamageTest {

    private static final Path FIXTURES = Path.of("..", "fixtures");

    private static final int TRIALS = 15;

    private static final Pattern CONTENT = Pattern.compile("(?<=>)[^<>\\s][^<>]*(?=<)|(?<=\")[^\"<>]*(?=\")");
    private static final Pattern ELEMENT = Pattern.compile("<(\\w[\\w-]*)( [^<>]*)?(/>|>[^<>]*</\\1>)");

    private static final List<String> STRANGE = List.of(
            "",
            "0",
            "-1",
            "-99999999999",
            "999999999999999999999",
            "NaN",
            "1e9",
            "1E-2000000000",
            "0.1234567890123",
            "x",
            "♯",
            "stop",
            "start",
            "yes",
            "3+2+x",
            "A",
            "1,5");

    static Stream<Path> fixtures() throws IOException {
        try (Stream<Path> folders = Files.list(FIXTURES)) {
            return folders
                    .map(folder -> folder.resolve("score.musicxml"))
                    .filter(Files::exists)
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void strangeValues(Path fixture) throws IOException {
        damage(fixture, CONTENT, random -> STRANGE.get(random.nextInt(STRANGE.size())));
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void missingElements(Path fixture) throws IOException {
        damage(fixture, ELEMENT, random -> "");
    }

    private interface Damage {
        String by(Random random);
    }

    /** Replaces about one match in a hundred, otherwise in each trial. */
    private static void damage(Path fixture, Pattern target, Damage damage) throws IOException {
        String score = Files.readString(fixture);
        int read = 0;
        for (int seed = 0; seed < TRIALS; seed++) {
            Random random = new Random(seed);
            String damaged = target.matcher(score)
                    .replaceAll(match ->
                            Matcher.quoteReplacement(random.nextInt(100) == 0 ? damage.by(random) : match.group()));
            try {
                Reading reading = Scores.read(damaged);
                assertThat(reading.solo().notes()).isNotEmpty();
                read++;
            } catch (ScoreException refusal) {
                assertThat(refusal.getMessage()).isNotBlank().doesNotContain("\n", "Exception", "null");
            } catch (RuntimeException e) {
                fail(fixture + " damaged with seed " + seed, e);
            }
        }
        assertThat(read)
                .as("how many of the damaged scores could still be read")
                .isPositive();
    }
}
