package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a teacher sees of {@code check}. */
class CheckCommandTest {

    private static final Path CLEAN = Path.of("../fixtures/two-wells/score.musicxml");

    @TempDir
    private Path folder;

    private Path score;

    /** One note of bar 2 is moved an octave down the neck; its pitch stays. */
    @BeforeEach
    void plantAnOctave() throws IOException {
        String text = Files.readString(CLEAN);
        int bar = text.indexOf("<measure number=\"2\"");
        int fret = text.indexOf("<fret>", bar) + "<fret>".length();
        int end = text.indexOf("</fret>", fret);
        int moved = Integer.parseInt(text.substring(fret, end)) - 12;
        score = folder.resolve("slip.musicxml");
        Files.writeString(score, text.substring(0, fret) + moved + text.substring(end));
    }

    @Test
    void tellsPlaceAndWhyAndWhatWasMeantOnStandardOutput() {
        Session session = Session.run("check", score.toString());
        assertThat(session.exit()).isEqualTo(1);
        assertThat(session.text())
                .contains("slip.musicxml: 1 warning")
                .contains("\nbar 2\n")
                .containsPattern(
                        "beat \\S+ {2}warning {2}string \\d fret \\d+: .* Meant: string \\d fret \\d+, \\S+\\? "
                                + "\\(octave-fret\\)")
                .doesNotContain("\u001b");
    }

    @Test
    void saysSoWhereThereIsNothingToDoubt() {
        Session session = Session.run("check", CLEAN.toString());
        assertThat(session.exit()).isZero();
        assertThat(session.text()).contains("nothing to doubt");
    }

    @Test
    void showsHintsOnlyWhenAsked() {
        assertThat(Session.run("check", CLEAN.toString(), "--min-severity", "hint")
                        .exit())
                .isZero();
        assertThat(Session.run("check", score.toString(), "--min-severity", "error")
                        .text())
                .contains("nothing to doubt");
    }

    @Test
    void asksOnlyTheNamedChecks() {
        assertThat(Session.run("check", score.toString(), "--only", "tie,legato")
                        .exit())
                .isZero();
        assertThat(Session.run("check", score.toString(), "--skip", "octave-fret")
                        .exit())
                .isZero();
        assertThat(Session.run("check", score.toString(), "--only", "octave-fret")
                        .exit())
                .isEqualTo(1);
    }

    @Test
    void saysOfWhichScoreANoticeSpeaksWhereThereAreSeveral() {
        String one = "../fixtures/reading/time/cue-notes.musicxml";
        String other = "../fixtures/reading/time/rhythm-slashes.musicxml";
        assertThat(Session.run("check", one).err()).startsWith("  note: cue notes");
        assertThat(Session.run("check", one, other).err().lines())
                .satisfiesExactly(
                        line -> assertThat(line).startsWith(one + ": note: cue notes"),
                        line -> assertThat(line).startsWith(other + ": note: rhythm slashes"));
        assertThat(Session.run("check", "--quiet", one, other).err()).isEmpty();
    }

    @Test
    void namesTheNearestOfTheChecks() {
        Session session = Session.run("check", score.toString(), "--only", "octavefret");
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err()).contains("'octavefret' is no check; did you mean 'octave-fret'?");
        assertThat(Session.run("check", score.toString(), "--skip", "box").err())
                .contains("'box' is no check");
        assertThat(Session.run("check", score.toString(), "--min-severity", "warn")
                        .err())
                .contains("did you mean 'warning'?");
    }

    @Test
    void namesACheckByAPartOfItsName() {
        assertThat(Session.run("check", score.toString(), "--only", "octav").err())
                .contains("'octav' is no check; did you mean 'octave-fret'?");
        assertThat(Session.run("check", score.toString(), "--skip", "box").err())
                .contains("'box' is no check; did you mean 'wrong-box'?");
    }

    /** "Nothing to doubt" would be said of a score that nobody has looked at. */
    @Test
    void refusesToAskNoCheckAtAll() {
        Session session = Session.run("check", score.toString(), "--only", "tie", "--skip", "tie");
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.text()).isEmpty();
        assertThat(session.err()).contains("no check is left");
    }

    @Test
    void namesTheChecksThatNeedTheFretsThatAScoreLacks() throws IOException {
        Path bare = folder.resolve("bare.musicxml");
        Files.writeString(bare, Files.readString(CLEAN).replaceAll("<(string|fret)>\\d+</(string|fret)>", ""));
        Session session = Session.run("check", bare.toString());
        assertThat(session.exit()).isZero();
        assertThat(session.err())
                .contains("the score has no strings and frets, and these checks, which need them, were left out: "
                        + "pitch-against-fret, octave-fret, off-neck, same-string, legato, reach-and-shift, wrong-box,"
                        + " likely-string")
                .doesNotContain("inferred");
    }

    /** Of the two that are asked, one needs no frets. */
    @Test
    void namesOnlyChecksThatWereAsked() throws IOException {
        Path bare = folder.resolve("bare.musicxml");
        Files.writeString(bare, Files.readString(CLEAN).replaceAll("<(string|fret)>\\d+</(string|fret)>", ""));
        assertThat(Session.run("check", bare.toString(), "--only", "legato,tie").err())
                .contains("were left out: legato\n");
        assertThat(Session.run("check", bare.toString(), "--only", "tie").err()).doesNotContain("left out");
        assertThat(Session.run("check", CLEAN.toString()).err()).doesNotContain("left out");
    }

    @Test
    void saysThatNotesWithoutFretsAreNotComparedWithAny() throws IOException {
        Path bare = folder.resolve("bare.musicxml");
        Files.writeString(bare, Files.readString(CLEAN).replaceFirst("<string>\\d+</string>\\s*<fret>\\d+</fret>", ""));
        assertThat(Session.run("check", bare.toString()).err())
                .containsPattern(
                        "string and fret are missing for 1 of \\d+ notes, and nothing is doubted for want of them");
    }

    @Test
    void writesFindingsThatProgramsRead() {
        Session session = Session.run("check", score.toString(), "--findings", "-");
        JsonArray findings =
                JsonParser.parseString(session.text()).getAsJsonObject().getAsJsonArray("findings");
        assertThat(findings).hasSize(1);
        JsonObject doubt = findings.get(0).getAsJsonObject();
        assertThat(doubt.get("kind").getAsString()).isEqualTo("check");
        assertThat(doubt.get("severity").getAsString()).isEqualTo("warning");
        assertThat(doubt.getAsJsonObject("suggestion").has("fret")).isTrue();
        assertThat(doubt.get("line").getAsString()).isEqualTo("doubts");
    }

    @Test
    void letsADoubtStandUntilItsNotesChange() throws IOException {
        Path corrections = folder.resolve("slip.corrections.toml");
        Session accepting = Session.run("check", score.toString(), "--accept");
        assertThat(accepting.exit()).isZero();
        assertThat(accepting.err()).contains("1 doubt accepted in " + corrections);
        assertThat(Session.run("check", score.toString()).text()).contains("nothing to doubt (1 accepted)");
        assertThat(Session.run("check", score.toString()).exit()).isZero();

        String before = Files.readString(corrections);
        Session again = Session.run("check", score.toString(), "--accept");
        assertThat(again.err()).contains("nothing new to accept");
        assertThat(Files.readString(corrections)).isEqualTo(before);

        Files.copy(CLEAN, score, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Session mended = Session.run("check", score.toString());
        assertThat(mended.exit()).isZero();
        assertThat(mended.text()).contains("the accepted octave-fret in bar 2").contains("fits nothing any more");
    }

    @Test
    void keepsWhatTheTeacherWroteIntoTheCorrections() throws IOException {
        Path corrections = folder.resolve("slip.corrections.toml");
        String own =
                "# ask Mona about bar 7\r\n\n[[accepted]] # her word\nrule = \"tie\"\nbar = \"9\"\nbeat = \"1\"\nnotes = \"00\"";
        Files.writeString(corrections, own);
        Session.run("check", score.toString(), "--accept");
        assertThat(Files.readString(corrections)).startsWith(own).contains("rule = \"octave-fret\"");
    }

    @Test
    void refusesBrokenCorrectionsAndNamesTheLine() throws IOException {
        Path corrections = folder.resolve("slip.corrections.toml");
        Files.writeString(corrections, "[[accepted]]\nrule = \"tie\"\nbaar = \"9\"\n");
        Session session = Session.run("check", score.toString());
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err())
                .contains("slip.corrections.toml: line 3: 'baar': there is no such key; did you mean 'bar'?");

        Files.writeString(corrections, "[[accepted\n");
        assertThat(Session.run("check", score.toString()).err())
                .contains("slip.corrections.toml: line 1: this is not TOML; mend it after the pattern");
        Files.writeString(corrections, "[[accepted]]\nrule = \"tie\"\nbar = 9\n");
        assertThat(Session.run("check", score.toString()).err()).contains("line 3: 'bar': write it in quotation marks");
        Files.write(corrections, new byte[] {(byte) 0xff, (byte) 0xfe, 0x41});
        assertThat(Session.run("check", score.toString()).err()).contains("not UTF-8");
        assertThat(Session.run("check", score.toString(), "--accept").exit()).isEqualTo(2);
    }

    @Test
    void writesDoubtsAsALineThatCanBeStrippedAgain() throws IOException {
        Path annotated = folder.resolve("annotated.musicxml");
        Session.run("annotate", score.toString(), "-o", annotated.toString(), "--add-lines", "doubts");
        assertThat(Files.readString(annotated))
                .containsPattern(
                        "name=\"fretgloss:doubts\">\\s*<syllabic>single" + "</syllabic>\\s*<text>\\? \\d/\\d+</text>");
        Path plain = folder.resolve("plain.musicxml");
        Session.run("strip", annotated.toString(), "-o", plain.toString());
        assertThat(plain).hasSameBinaryContentAs(score);

        Session.run("check", score.toString(), "--accept");
        Session.run("annotate", score.toString(), "-o", annotated.toString(), "--add-lines", "doubts", "--replace");
        assertThat(Files.readString(annotated)).doesNotContain("fretgloss:doubts");
    }

    @Test
    void readsSeveralScoresAndEndsWithTheWorst() {
        Session session = Session.run(
                "check",
                CLEAN.toString(),
                score.toString(),
                folder.resolve("none.musicxml").toString());
        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.text()).contains("nothing to doubt", "1 warning");
        assertThat(session.err()).contains("none.musicxml: there is no such file");
        assertThat(Session.run("check", CLEAN.toString(), score.toString()).exit())
                .isEqualTo(1);
    }

    @Test
    void readsStandardInputButHasNoPlaceBesideIt() throws IOException {
        byte[] bytes = Files.readAllBytes(score);
        assertThat(Session.run(bytes, "check", "-").text()).contains("standard input: 1 warning");
        assertThat(Session.run(bytes, "check", "-", "--accept").exit()).isEqualTo(2);
        assertThat(Session.run("check").exit()).isEqualTo(2);
    }

    @Test
    void changesNoScore() throws IOException {
        byte[] before = Files.readAllBytes(score);
        Session.run("check", score.toString(), "--accept");
        assertThat(Files.readAllBytes(score)).isEqualTo(before);
        assertThat(new String(before, StandardCharsets.UTF_8)).contains("<fret>");
    }

    @Test
    void saysThatAnEntryNamesNoCheckThatIsKnownHere() throws IOException {
        Path corrections = folder.resolve("slip.corrections.toml");
        Session.run("check", score.toString(), "--accept");
        Files.writeString(corrections, Files.readString(corrections).replace("octave-fret", "octave-frett"));
        Session misspelt = Session.run("check", score.toString());
        assertThat(misspelt.exit()).isEqualTo(1);
        assertThat(misspelt.err())
                .containsPattern(
                        "the accepted octave-frett in bar 2 beat \\S+ has no effect: no such check is known here;"
                                + " did you mean 'octave-fret'\\?");
        Files.writeString(corrections, Files.readString(corrections).replace("octave-frett", "muffin"));
        assertThat(Session.run("check", score.toString()).err())
                .contains("the accepted muffin in bar 2 ", "no such check is known here; the jar of rules that has it")
                .doesNotContain("did you mean");
    }

    @Test
    void saysOnceThatTheCorrectionsAreAnotherScores() throws IOException {
        Path other = folder.resolve("other.musicxml");
        Files.copy(Path.of("../fixtures/harbour-light-shuffle/score.musicxml"), other);
        Session.run("check", score.toString(), "--accept");
        Session.run("check", withFret("31").toString(), "--accept");
        Path corrections =
                Files.move(folder.resolve("slip.corrections.toml"), folder.resolve("other.corrections.toml"));
        assertThat(count(Files.readString(corrections), "[[accepted]]")).isGreaterThan(1);

        Session session = Session.run("check", other.toString());
        assertThat(session.text())
                .contains("none of the entries in the corrections file fits this score: the file may belong to another"
                        + " score, or the score has been changed throughout\n")
                .doesNotContain("take the entry out");
        assertThat(count(session.text(), "corrections file")).isEqualTo(1);
    }

    /** Bar 99 is in no such score; an entry for a bar that is there may have been mended. */
    @Test
    void asksWhetherAnEntryForABarThatIsNotThereIsAnotherScores() throws IOException {
        Path corrections = folder.resolve("slip.corrections.toml");
        String entry = "[[accepted]]\nrule = \"tie\"\nbar = \"99\"\nbeat = \"1\"\nnotes = \"00\"\n";
        Files.writeString(corrections, entry);
        assertThat(Session.run("check", score.toString()).text())
                .contains("none of the entries in the corrections file fits this score")
                .doesNotContain("take the entry out");
    }

    @Test
    void doesNotPassAScoreThatNoAskedCheckCouldLookAt() throws IOException {
        Path bare = folder.resolve("bare.musicxml");
        Files.writeString(bare, Files.readString(CLEAN).replaceAll("<(string|fret)>\\d+</(string|fret)>", ""));
        Session alone = Session.run("check", bare.toString(), "--only", "off-neck");
        assertThat(alone.exit()).isZero();
        assertThat(alone.text())
                .contains("bare.musicxml: none of the asked checks could be made: they need string and fret")
                .doesNotContain("nothing to doubt");
        assertThat(Session.run("check", bare.toString(), "--only", "off-neck,tie")
                        .text())
                .contains("bare.musicxml: nothing to doubt in what could be checked\n");
        assertThat(Session.run("check", bare.toString(), "--only", "tie").text())
                .contains("bare.musicxml: nothing to doubt\n");
        assertThat(Session.run("check", CLEAN.toString()).text()).endsWith(": nothing to doubt\n");
    }

    @Test
    void namesTheWrittenPlaceOfANoteThatIsOffTheNeck() throws IOException {
        Session before = Session.run("check", withFret("-2").toString());
        assertThat(before.text()).containsPattern("error {4}string \\d fret -2: Fret -2 is written");
        assertThat(before.err()).doesNotContain("missing");
        assertThat(Session.run("check", score.toString(), "--only", "legato").text())
                .contains("nothing to doubt in what could be checked");
        Session beyond = Session.run("check", with("string", "9").toString());
        assertThat(beyond.text()).containsPattern("error {4}string 9 fret \\d+: String 9 is written");
        assertThat(beyond.err()).doesNotContain("missing");
    }

    @Test
    void doubtsAFretThatIsANumberHoweverLarge() throws IOException {
        Session large = Session.run("check", withFret("99999999999").toString(), "--only", "off-neck");
        assertThat(large.exit()).isEqualTo(1);
        assertThat(large.text())
                .contains("1 error")
                .containsPattern("string \\d: A fret beyond 999999 is written, and the neck ends at fret 24");
        assertThat(large.err()).doesNotContain("missing");
        assertThat(Session.run("check", withFret("-99999999999").toString(), "--only", "off-neck")
                        .text())
                .contains("A fret below -999999 is written, and frets begin at 0");
    }

    @Test
    void doesNotPassAFretThatIsNoNumber() throws IOException {
        Session session = Session.run("check", withFret("x").toString());
        assertThat(session.exit()).isZero();
        assertThat(session.text()).contains("slip.musicxml: nothing to doubt in what could be checked\n");
        assertThat(session.err()).contains("'x'", "string and fret are missing for 1 of");
    }

    @Test
    void takesTheFretsOfTheNeckFromTheUser() throws IOException {
        String long22 = withFret("22").toString();
        assertThat(Session.run("check", long22, "--only", "off-neck").exit()).isZero();
        assertThat(Session.run("check", long22, "--only", "off-neck", "--neck", "21")
                        .text())
                .contains("Fret 22 is written, and the neck ends at fret 21.");
        Session wrong = Session.run("check", long22, "--neck", "40");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("--neck takes 12 to 36 frets, such as 22, and not '40'");
        assertThat(Session.run("annotate", long22, "--neck", "x").err()).contains("--neck takes 12 to 36 frets");

        Path annotated = folder.resolve("annotated.musicxml");
        String[] doubts = {"annotate", CLEAN.toString(), "-o", annotated.toString(), "--replace", "--lines", "doubts"};
        Session.run(doubts);
        assertThat(Files.readString(annotated)).doesNotContain("fretgloss:doubts");
        Session.run(Stream.concat(Stream.of(doubts), Stream.of("--neck", "13")).toList());
        assertThat(Files.readString(annotated)).contains("fretgloss:doubts");
    }

    @Test
    void doesNotCallDoubtsOpenThatItHasJustAccepted() {
        Session accepting = Session.run("check", score.toString(), "--accept");
        assertThat(accepting.text())
                .contains("slip.musicxml: accepted: 1 warning\n", "(octave-fret)")
                .doesNotContain("slip.musicxml: 1 warning");
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    private Path withFret(String fret) throws IOException {
        return with("fret", fret);
    }

    /** The first string or fret of bar 2 is written otherwise. */
    private Path with(String element, String content) throws IOException {
        String text = Files.readString(CLEAN);
        String tag = "<" + element + ">";
        int begin = text.indexOf(tag, text.indexOf("<measure number=\"2\"")) + tag.length();
        return Files.writeString(score, text.substring(0, begin) + content + text.substring(text.indexOf("</", begin)));
    }
}
