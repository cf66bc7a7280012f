package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The invented solos with every string and fret taken out are annotated all the same, and it is said that the places are
 * inferred. How many are where the score has them is printed, not asserted.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WithoutFretsTest {

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private int notes;
    private int right;

    /** By string and fret; "" where there is none. */
    private record Places(Map<Integer, String> byNote, boolean allInferred) {

        static Places of(Path findings) throws IOException {
            Map<Integer, String> places = new HashMap<>();
            boolean inferred = true;
            for (JsonElement element : JsonParser.parseString(Files.readString(findings))
                    .getAsJsonObject()
                    .getAsJsonArray("notes")) {
                JsonObject note = element.getAsJsonObject();
                boolean placed = note.has("fret");
                places.put(note.get("note").getAsInt(), placed ? note.get("string") + "/" + note.get("fret") : "");
                inferred &= !placed || note.get("inferred").getAsBoolean();
            }
            return new Places(places, inferred);
        }
    }

    static List<Fixture> fixtures() {
        return Fixture.all();
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void isAnnotatedFromPitchAlone(Fixture fixture) throws IOException {
        String text = Files.readString(fixture.score());
        Path bare = Files.writeString(
                folder.resolve("bare.musicxml"),
                text.replaceAll("<string>\\d+</string>", "").replaceAll("<fret>\\d+</fret>", ""));
        assertThat(bare).content().isNotEqualTo(text);

        Places written = places(fixture.score(), fixture.options(), false);
        Places inferred = places(bare, fixture.options(), true);

        assertThat(written.allInferred()).isFalse();
        assertThat(inferred.allInferred()).isTrue();
        assertThat(inferred.byNote()).containsOnlyKeys(written.byNote().keySet());
        written.byNote().forEach((note, place) -> {
            notes += place.isEmpty() ? 0 : 1;
            right += !place.isEmpty() && place.equals(inferred.byNote().get(note)) ? 1 : 0;
        });
    }

    private Places places(Path score, List<String> options, boolean saysInferred) throws IOException {
        Path findings = folder.resolve("findings.json");
        List<String> arguments = new ArrayList<>(List.of("annotate", score.toString(), "--replace", "--all-notes"));
        arguments.addAll(options);
        arguments.addAll(List.of("-o", folder.resolve("out.musicxml").toString(), "--findings", findings.toString()));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        assertThat(session.err().contains("they are inferred")).isEqualTo(saysInferred);
        return Places.of(findings);
    }

    @AfterAll
    void tell() {
        System.out.printf(
                Locale.ROOT,
                "string and fret of the fixtures, from pitch: %d of %d (%.1f %%)%n",
                right,
                notes,
                100.0 * right / notes);
    }
}
