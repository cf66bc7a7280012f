package org.fretgloss.annotator.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.pitch.PitchClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written agrees with the JSON Schema that describes it, and the schema refuses what it should. */
class FindingsJsonTest {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Objects.requireNonNull(FindingsJson.class.getResourceAsStream("findings.schema.json")));

    static Stream<Path> scores() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("../fixtures"))) {
            return files.filter(file -> file.endsWith("score.musicxml")).sorted().toList().stream();
        }
    }

    private static String json(Path score, Given given) throws Exception {
        return FindingsJson.of(FRETGLOSS.annotate(ScoreFile.read(score), Request.PLAIN.with(given)));
    }

    private static List<String> complaints(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("scores")
    void everyFixtureAgreesWithTheSchema(Path score) throws Exception {
        assertThat(complaints(json(score, Given.NOTHING))).isEmpty();
        Progression form = Progression.form("quick-change", PitchClass.parse("E"));
        assertThat(complaints(json(score, new Given(Optional.empty(), Optional.of(form), Optional.of("2")))))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"fretgloss-findings/1\" | \"another/1\"",
                "\"capo\": 0 | \"capo\": -1",
                "\"bar\": \"1\" | \"bar\": 1",
                "\"kind\": \"mark\" | \"kind\": \"hint\"",
                "\"line\": \"moves\" | \"line\": \"move\"",
                "\"kind\": \"bend-release\" | \"kind\": \"bend-and-release\"",
                "\"fromDegree\" | \"startDegree\"",
                "\"by\": \"hammer-on\" | \"by\": \"hammer\"",
                "\"box\": 1 | \"box\": 6",
                "\"tonic\": \"A\" | \"tonic\": \"a\"",
                "\"runnerUp\": | \"second\":",
                "\"beats\": \"3\" | \"beats\": 3",
            })
    void theSchemaRefuses(String right, String wrong) throws Exception {
        Progression form = Progression.form("twelve-bar", PitchClass.parse("A"));
        String json = json(
                Path.of("../fixtures/harbour-light-shuffle/score.musicxml"),
                new Given(Optional.empty(), Optional.of(form), Optional.empty()));
        assertThat(json).contains(right);
        assertThat(complaints(json.replace(right, wrong))).isNotEmpty();
    }

    @Test
    void endsInALineFeedAndIsReadable() throws Exception {
        String json = json(Path.of("../fixtures/plain-clothes/score.musicxml"), Given.NOTHING);
        assertThat(json).endsWith("}\n").contains("♭").doesNotContain("\\u");
    }
}
