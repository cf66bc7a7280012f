package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.neck.Tuning;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Music unlike a solo gets an answer that says how sure it is, or one clear line; it is written without loss. */
class OddMusicTest {

    private static final Tuning TWELVE_STRINGS = Tuning.of("E4 E4 B3 B3 G4 G3 D4 D3 A3 A2 E3 E2");

    /** A home that little speaks for is called no surer. */
    private static final double UNSURE = 0.6;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    /** What came of a score. */
    private record Answer(JsonObject findings, String told) {

        double sureness() {
            return findings.getAsJsonObject("home").get("confidence").getAsDouble();
        }

        int notes() {
            return findings.getAsJsonArray("notes").size();
        }

        long withFret() {
            return findings.getAsJsonArray("notes").asList().stream()
                    .filter(note -> note.getAsJsonObject().has("fret"))
                    .count();
        }
    }

    @TestFactory
    Stream<DynamicContainer> answered() {
        return Stream.of(
                both("one note", OddScore::oneNote, answer -> {
                    assertThat(answer.notes()).isEqualTo(1);
                    assertThat(answer.sureness()).isLessThanOrEqualTo(UNSURE);
                }),
                both("one note over and over", OddScore::oneNoteOverAndOver, answer -> {
                    assertThat(answer.notes()).isEqualTo(64);
                    assertThat(answer.sureness()).isLessThanOrEqualTo(UNSURE);
                }),
                both("twenty voices", score -> score.voices(20), answer -> {
                    assertThat(answer.notes()).isEqualTo(20);
                    assertThat(answer.told()).doesNotContain("missing for", "no string reaches");
                }),
                both("10,000 notes in a bar", score -> score.notesInOneBar(10_000), answer -> {
                    assertThat(answer.notes()).isEqualTo(10_000);
                    assertThat(answer.withFret()).isEqualTo(10_000);
                }),
                both(
                        "chromatic clusters",
                        OddScore::chromaticClusters,
                        answer -> assertThat(answer.sureness()).isLessThanOrEqualTo(UNSURE)),
                both(
                        "a chord symbol on every note",
                        OddScore::chordOnEveryNote,
                        answer -> assertThat(answer.findings().getAsJsonArray("notes"))
                                .allSatisfy(note -> assertThat(
                                                note.getAsJsonObject().has("chord"))
                                        .isTrue())),
                both(
                        "a progression longer than the solo",
                        OddScore::plainSolo,
                        answer -> assertThat(answer.told())
                                .contains("the progression has 5 bars and the solo only 4", "not all of it is used"),
                        "--chords",
                        "A7 | D7 | E7 | A7 | B7"));
    }

    @TestFactory
    Stream<DynamicTest> twelveStrings() {
        return Stream.of(true, false)
                .map(frets -> dynamicTest(name(frets), () -> {
                    Answer answer = answer(new OddScore(TWELVE_STRINGS, frets), OddScore::plainSolo);
                    assertThat(answer.findings().getAsJsonArray("tuning")).hasSize(12);
                    assertThat(answer.withFret()).isEqualTo(16);
                }));
    }

    @Test
    void restsOnlyAreRefused() throws IOException {
        for (boolean frets : List.of(true, false)) {
            assertThat(refusal(new OddScore(Tuning.STANDARD, frets).restsOnly()))
                    .contains("notes");
        }
    }

    /** Every fret lies beyond the neck, and no staff writes a pitch. */
    @Test
    void fretsThatNoNeckHasAreRefused() throws IOException {
        String score = new OddScore(Tuning.STANDARD, true)
                .plainSolo()
                .replaceAll("<fret>\\d+</fret>", "<fret>99</fret>")
                .replaceAll("(?s)<pitch>.*?</pitch>", "<unpitched/>");
        assertThat(refusal(score)).contains("no notes");
    }

    @Test
    void aFormThatStartsOutsideTheScoreIsRefused() throws IOException {
        String score = new OddScore(Tuning.STANDARD, true).plainSolo();
        for (String start : List.of("0", "5", "-1", "nowhere")) {
            assertThat(refusal(score, "--form", "twelve-bar A", "--form-start=" + start))
                    .contains("cannot start in bar " + start, "bars 1 to 4");
        }
    }

    /** A tablature, and the same in notation alone. */
    private DynamicContainer both(
            String name, Function<OddScore, String> music, Consumer<Answer> expectation, String... options) {
        return dynamicContainer(
                name,
                Stream.of(true, false)
                        .map(frets -> dynamicTest(
                                name(frets),
                                () -> expectation.accept(
                                        answer(new OddScore(Tuning.STANDARD, frets), music, options)))));
    }

    private static String name(boolean frets) {
        return frets ? "tablature" : "notation alone";
    }

    private Answer answer(OddScore odd, Function<OddScore, String> music, String... options) throws IOException {
        Path score = Files.writeString(folder.resolve("score.musicxml"), music.apply(odd));
        Path out = folder.resolve("out.musicxml");
        Path plain = folder.resolve("plain.musicxml");
        Path findings = folder.resolve("findings.json");
        List<String> arguments = new ArrayList<>(List.of("annotate", score.toString(), "--replace", "--all-notes"));
        arguments.addAll(List.of(options));
        arguments.addAll(List.of("-o", out.toString(), "--findings", findings.toString()));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        Session stripped = Session.run("strip", out.toString(), "--replace", "-o", plain.toString());
        assertThat(stripped.exit()).as(stripped.err()).isZero();
        assertThat(plain).hasSameBinaryContentAs(score);

        JsonObject json = JsonParser.parseString(Files.readString(findings)).getAsJsonObject();
        assertThat(session.err()).contains("% sure");
        assertThat(session.err().contains("inferred")).isEqualTo(!odd.frets());
        return new Answer(json, session.err());
    }

    private String refusal(String score, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("score.musicxml"), score);
        List<String> arguments = new ArrayList<>(List.of("annotate", file.toString()));
        arguments.addAll(List.of(options));
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isEqualTo(2);
        assertThat(folder.resolve("score-annotated.musicxml")).doesNotExist();
        return session.err().lines().reduce((a, b) -> a + " / " + b).orElseThrow();
    }
}
