package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The invented solos, read as whoever wrote them out by hand counted them. */
class FixturesTest {

    static List<Path> fixtures() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("..", "fixtures"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("expected.json")))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void haveTheNotesAndTheTuningThatTheyWereWrittenWith(Path fixture) throws IOException, ScoreException {
        JsonObject expected = JsonParser.parseString(Files.readString(fixture.resolve("expected.json")))
                .getAsJsonObject();
        Reading reading = Scores.read(Files.readString(fixture.resolve("score.musicxml")));
        Solo solo = reading.solo();
        assertThat(solo.part().id())
                .isEqualTo(expected.getAsJsonObject("part").get("id").getAsString());
        assertThat(solo.notes()).hasSize(expected.get("notes").getAsInt());
        assertThat(solo.tuning().capo()).isEqualTo(expected.get("capo").getAsInt());
        assertThat(solo.tuning().strings())
                .extracting(Pitch::toString)
                .isEqualTo(expected.getAsJsonArray("tuning").asList().stream()
                        .map(JsonElement::getAsString)
                        .toList());
        assertThat(reading.carriers()).hasSameSizeAs(solo.notes());
    }
}
