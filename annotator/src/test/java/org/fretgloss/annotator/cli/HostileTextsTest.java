package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Texts of a score that would steer a terminal, turn a line round or forge one (ECMA-48 for the controls, Unicode
 * Standard Annex 9 for the directions), in every place where a score has texts.
 */
class HostileTextsTest {

    private static final Path GOOD = Path.of("../fixtures/brass-lantern/score.musicxml");

    /** CSI as one character, delete, next line, right-to-left override, isolate, line separator, LF, CR, tab. */
    private static final String HARM = "\u009B2J\u007F\u0085\u202E\u2067\u2028&#10;&#13;&#9;<![CDATA[</part-name>&]]>";

    private static final String HARM_IN_ATTRIBUTE = "\u009B2J\u007F\u0085\u202E&#10;&#13;&lt;&quot;";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @Test
    void doNoHarmInSummaryFindingsAndScore() throws IOException {
        Path score = hostileScore();
        Path annotated = folder.resolve("annotated.musicxml");

        Session session = Session.run(
                "annotate", score.toString(), "-o", annotated.toString(), "--findings", "-", "--add-lines", "chords");

        assertThat(session.exit()).as(session.err()).isZero();
        assertHarmless(session.err());
        assertHarmless(session.text());
        assertThat(JsonParser.parseString(session.text())
                        .getAsJsonObject()
                        .getAsJsonObject("part")
                        .get("name")
                        .getAsString())
                .contains("\u009B2J\u007F\u0085\u202E\u2067", "</part-name>&");
        List<String> ours = List.of(Files.readString(annotated).split("name=\"fretgloss"));
        assertThat(ours).hasSizeGreaterThan(2);
        ours.stream().skip(1).forEach(our -> assertHarmless(our.substring(0, our.indexOf("</"))));
        assertThat(Session.run("strip", annotated.toString(), "-o", "-").out().toByteArray())
                .isEqualTo(Files.readAllBytes(score));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "strip"})
    void doNoHarmInOtherCommands(String command) throws IOException {
        Session session = Session.run(command, hostileScore().toString());

        assertThat(session.exit()).isLessThan(2);
        assertHarmless(session.err());
        assertHarmless(session.text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<score-\u202Epartwise/>",
                "<!DOCTYPE score-partwise [<!ENTITY a\u202Eb 'c'>]><score-partwise>&a\u202Eb;</score-partwise>",
                "<score-partwise><part id='P\u009B'><measure number='\u009B2J\u202E'><note></measure>",
                "<score-partwise version='\u009B'><\u009B"
            })
    void doNoHarmInErrors(String text) throws IOException {
        Path score = Files.writeString(folder.resolve("bad\u009B\u202E.musicxml"), text);

        Session session = Session.run("annotate", score.toString(), "--trace");

        assertThat(session.exit()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertHarmless(session.err());
        assertThat(session.err().lines().findFirst().orElseThrow()).startsWith("fretgloss: ");
    }

    @Test
    void doNoHarmInAnArchivesNames() throws IOException {
        Path score = Files.write(folder.resolve("bad.mxl"), BadInput.archiveNaming("\u009B2J\u202E&#10;x.xml"));

        Session session = Session.run("annotate", score.toString());

        assertThat(session.err().lines()).singleElement().asString().contains("is missing from the archive");
        assertHarmless(session.err());
    }

    private Path hostileScore() throws IOException {
        String good = Files.readString(GOOD);
        String hostile = good.replaceFirst("<work-title>[^<]*", "<work-title>" + HARM)
                .replaceFirst("<part-name>[^<]*", "<part-name>" + HARM)
                .replaceFirst("<kind[^>]*>", "<kind text=\"" + HARM_IN_ATTRIBUTE + "\">")
                .replaceFirst("<measure number=\"1\"", "<measure number=\"" + HARM_IN_ATTRIBUTE + "\"")
                .replaceFirst(
                        "(?s)(<measure number=\"2\".*?>)",
                        "$1<direction><direction-type><words>" + HARM + "</words></direction-type></direction>");
        assertThat(hostile)
                .contains("<part-name>" + HARM, "<words>" + HARM)
                .contains("<kind text=\"" + HARM_IN_ATTRIBUTE);
        return Files.write(folder.resolve("score.musicxml"), hostile.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertHarmless(String text) {
        Stream<String> harmful = text.codePoints()
                .filter(c -> c != '\n')
                .filter(c -> Character.isISOControl(c)
                        || Character.getType(c) == Character.FORMAT
                        || Character.getType(c) == Character.LINE_SEPARATOR)
                .mapToObj(Character::getName);
        assertThat(harmful).as(text).isEmpty();
    }
}
