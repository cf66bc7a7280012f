package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands do when all is well. */
class CommandTest {

    private static final Path SHUFFLE = Path.of("../fixtures/harbour-light-shuffle/score.musicxml");
    private static final Path PLAIN = Path.of("../fixtures/plain-clothes/score.musicxml");
    private static final String FORM = "twelve-bar A";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Path score;

    @BeforeEach
    void copyAScore() throws IOException {
        score = Files.copy(SHUFFLE, folder.resolve("song.musicxml"));
    }

    private String annotated(String... options) throws IOException {
        Path out = folder.resolve("out.musicxml");
        String[] arguments = new String[options.length + 5];
        System.arraycopy(
                new String[] {"annotate", score.toString(), "-o", out.toString(), "--replace"}, 0, arguments, 0, 5);
        System.arraycopy(options, 0, arguments, 5, options.length);
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        return Files.readString(out);
    }

    @Test
    void writesBesideTheInputAndLeavesTheInputAlone() throws IOException {
        assertThat(Session.run("annotate", score.toString()).exit()).isZero();
        assertThat(folder.resolve("song-annotated.musicxml")).exists();
        assertThat(score).hasSameBinaryContentAs(SHUFFLE);
        assertThat(Session.run(
                                "strip",
                                folder.resolve("song-annotated.musicxml").toString())
                        .exit())
                .isZero();
        assertThat(folder.resolve("song-annotated-plain.musicxml")).hasSameBinaryContentAs(SHUFFLE);
    }

    @Test
    void aDashIsStandardInputAndOutput() throws IOException {
        Session annotated = Session.run(Files.readAllBytes(score), "annotate", "-", "--quiet");
        assertThat(annotated.exit()).isZero();
        assertThat(annotated.err()).isEmpty();
        Session stripped = Session.run(annotated.out().toByteArray(), "strip", "-", "--quiet");
        assertThat(stripped.out().toByteArray()).isEqualTo(Files.readAllBytes(SHUFFLE));
    }

    @Test
    void findingsGoToAFileOrToStandardOutput() throws IOException {
        Path findings = folder.resolve("findings.json");
        assertThat(Session.run("annotate", score.toString(), "--findings", findings.toString())
                        .exit())
                .isZero();
        assertThat(JsonParser.parseString(Files.readString(findings))
                        .getAsJsonObject()
                        .get("score")
                        .getAsString())
                .isEqualTo(score.toString());
        Session session = Session.run("annotate", score.toString(), "--replace", "--findings", "-");
        assertThat(session.text()).startsWith("{\n").contains("fretgloss-findings/1");
    }

    @Test
    void anExistingOutputIsReplacedWhenAsked() throws IOException {
        Path out = Files.writeString(folder.resolve("out.musicxml"), "old");
        assertThat(annotated()).contains("fretgloss:box");
        assertThat(out).isNotEmptyFile();
    }

    @Test
    void theInputItselfIsReplacedOnlyWhenAsked() throws IOException {
        assertThat(Session.run("annotate", score.toString(), "-o", score.toString())
                        .exit())
                .isEqualTo(2);
        assertThat(score).hasSameBinaryContentAs(SHUFFLE);
        assertThat(Session.run("annotate", score.toString(), "-o", score.toString(), "--replace")
                        .exit())
                .isZero();
        assertThat(Files.readString(score)).contains("fretgloss:box");
    }

    /** Some libraries read further arguments from a file named so. */
    @Test
    void anAtBeforeANameIsPartOfTheName() {
        Session session = Session.run("annotate", "@" + score);
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err()).startsWith("fretgloss: @" + score).contains("no such file");
    }

    @Test
    void linesAreChosen() throws IOException {
        assertThat(annotated("--lines", "box,shape"))
                .contains("fretgloss:box", "fretgloss:shape")
                .doesNotContain("fretgloss:moves");
        assertThat(annotated("--add-lines", "degrees")).contains("fretgloss:moves", "fretgloss:degrees");
    }

    @Test
    void chordsAreWrittenWhereTheUserGaveThem() throws IOException {
        assertThat(annotated()).doesNotContain("fretgloss:chords");
        assertThat(annotated("--form", FORM)).contains("fretgloss:chords").contains("<text>D7</text>");
        assertThat(annotated("--form", FORM, "--lines", "box")).doesNotContain("fretgloss:chords");
        assertThat(annotated("--form", FORM, "--roman")).contains("<text>IV</text>");
    }

    @Test
    void romanNumeralsWithoutALineToStandOnAreTold() {
        assertThat(Session.run("annotate", score.toString(), "--roman").err())
                .contains("Roman numerals", "--add-lines chords");
        assertThat(Session.run("annotate", score.toString(), "--replace", "--form", FORM, "--roman")
                        .err())
                .doesNotContain("Roman numerals");
    }

    @Test
    void marksThatNeedAChordAreLeftOutWithoutOneAndTheUserIsToldOnce() throws IOException {
        Session session = Session.run("annotate", score.toString());
        assertThat(session.err().lines().filter(line -> line.contains("--chords")))
                .hasSize(1);
        assertThat(Files.readString(folder.resolve("song-annotated.musicxml"))).doesNotContain("fretgloss:outline");
    }

    @Test
    void asciiIsForTheScoreToo() throws IOException {
        assertThat(annotated("--form", FORM, "--ascii"))
                .contains("<text>1/2 b3-&gt;3</text>")
                .doesNotContain("♭");
    }

    @Test
    void asciiChangesTheTextsInTheFindingsAndNoValue() {
        String json = Session.run("annotate", score.toString(), "--form", FORM, "--ascii", "--findings", "-")
                .text();
        assertThat(json).contains("\"text\": \"1/2 b3->3\"").contains("\"fromDegree\": \"♭3\"");
        assertThat(json.lines().filter(line -> line.contains("\"text\""))).noneMatch(line -> line.contains("♭"));
    }

    @Test
    void spaceAndCurlsAreSwitches() throws IOException {
        score = Files.copy(PLAIN, folder.resolve("plain.musicxml"));
        assertThat(annotated()).doesNotContain("<text>¼");
        assertThat(annotated("--curls")).contains("<text>¼");
        assertThat(count(annotated("--space", "1"), "<text>space")).isGreaterThan(count(annotated(), "<text>space"));
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    @Test
    void aProgressionLongerThanTheSoloIsANotice() {
        String chords = "A7 | ".repeat(29) + "A7";
        Session session = Session.run("annotate", score.toString(), "--chords", chords);
        assertThat(session.exit()).isZero();
        assertThat(session.err()).contains("the progression has 30 bars and the solo only 14");
    }

    @Test
    void aCompressedScoreStaysOneAndKeepsItsOtherEntries() throws IOException {
        byte[] archive = BadInput.archive(new java.util.TreeMap<>(Map.of(
                "META-INF/container.xml",
                BadInput.text("<container><rootfiles><rootfile full-path=\"song.xml\"/></rootfiles></container>"),
                "song.xml",
                Files.readAllBytes(SHUFFLE),
                "cover.png",
                new byte[] {1, 2, 3})));
        Path packed = Files.write(folder.resolve("song.mxl"), archive);
        assertThat(Session.run("annotate", packed.toString()).exit()).isZero();
        Path written = folder.resolve("song-annotated.mxl");
        assertThat(Session.run("strip", written.toString()).exit()).isZero();
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(
                folder.resolve("song-annotated-plain.mxl").toFile())) {
            assertThat(zip.getInputStream(zip.getEntry("song.xml")).readAllBytes())
                    .isEqualTo(Files.readAllBytes(SHUFFLE));
            assertThat(zip.getInputStream(zip.getEntry("cover.png")).readAllBytes())
                    .containsExactly(1, 2, 3);
        }
    }

    @Test
    void theSummarySaysHomeChordsCountsClimaxAndSilence() {
        Session session = Session.run("annotate", score.toString(), "--form", FORM);
        assertThat(session.err())
                .contains("home: A minor pentatonic, plus C♯ (3): 6 times, 1 of them bent from C")
                .contains("chords: A7 D7 E7 (twelve-bar in A, from bar 3)")
                .contains("7 × bend")
                .contains("climax: 2 bars from bar 11")
                .containsPattern("silence: \\d+ % of the solo");
        assertThat(session.out().size()).isZero();
    }

    @Test
    void rulesAreListedAndTheirPagesShown() {
        assertThat(Session.run("rules").text().lines().map(line -> line.split(" ", 2)[0]))
                .startsWith(
                        "box", "reach", "bend", "third", "outline", "outside", "colour", "space", "phrase", "landing",
                        "climax")
                .contains("wrong-box", "same-string");
        assertThat(Session.run("rules", "bend").text()).startsWith("# Bend\n").contains("## Sources");
    }

    @Test
    void helpNamesTheCautionAndTheRightsHolder() {
        String help = Session.run("annotate", "--help").text();
        assertThat(help).contains("stop if it hurts", "rights", "--form-start").contains("\"A7 | D7 | A7 | %\"");
        assertThat(Session.run("--help").text()).contains("annotate", "strip", "rules", "Exit codes");
        assertThat(Session.run("--version").text().strip()).matches("fretgloss \\d+\\.\\d+\\.\\d+");
    }

    @Test
    void aTraceIsShownOnlyWhenAsked() {
        assertThat(Session.run("annotate", "nosuch.musicxml").err()).doesNotContain("at org.fretgloss");
        assertThat(Session.run("annotate", "nosuch.musicxml", "--trace").err()).contains("at org.fretgloss");
    }

    @Test
    void theScoresOwnTextsDoNotSteerTheTerminal() throws IOException {
        String text = Files.readString(SHUFFLE, StandardCharsets.UTF_8)
                .replace("<part-name>Lead Guitar", "<part-name>Lead\u202eGuitar");
        Files.writeString(score, text);
        assertThat(Session.run("annotate", score.toString(), "--part", "9").err())
                .contains("Lead")
                .doesNotContain("\u202e");
    }
}
