package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.Archives;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where results go, and that nothing goes anywhere else. */
class OutputTest {

    private static final Path PLAIN = Path.of("../fixtures/plain-clothes/score.musicxml");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Path score;

    @BeforeEach
    void copyAScore() throws IOException {
        score = Files.copy(PLAIN, folder.resolve("song.musicxml"));
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    private static Session done(String... arguments) {
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isZero();
        return session;
    }

    private static void refused(Session session, String... words) {
        assertThat(session.exit()).as(session.err()).isEqualTo(2);
        assertThat(session.out().size()).isZero();
        assertThat(session.err().lines()).singleElement().asString().contains(words);
    }

    @ParameterizedTest
    @CsvSource({
        "a.xml, a-annotated.xml, a-annotated-plain.xml",
        "a.musicxml, a-annotated.musicxml, a-annotated-plain.musicxml",
        "take 2.final.xml, take 2.final-annotated.xml, take 2.final-annotated-plain.xml",
        "noext, noext-annotated, noext-annotated-plain",
        "Lied für Gitarre ♭.xml, Lied für Gitarre ♭-annotated.xml, Lied für Gitarre ♭-annotated-plain.xml"
    })
    @DisplayName("without -o a result stands beside the input, under a name made from it")
    void defaultNames(String input, String annotated, String plain) throws IOException {
        Files.move(score, folder.resolve(input));

        done("annotate", at(input));
        done("strip", at(annotated));

        assertThat(names()).containsExactlyInAnyOrder(input, annotated, plain);
        assertThat(folder.resolve(plain)).hasSameBinaryContentAs(PLAIN);
    }

    @Test
    @DisplayName("a file, standard output and standard input all give and take the same bytes")
    void streams() throws IOException {
        done("annotate", score.toString(), "-o", at("out.musicxml"));
        byte[] toFile = Files.readAllBytes(folder.resolve("out.musicxml"));

        assertThat(done("annotate", score.toString(), "-o", "-").out().toByteArray())
                .isEqualTo(toFile);
        assertThat(Session.run(Files.readAllBytes(score), "annotate", "-").out().toByteArray())
                .isEqualTo(toFile);
        assertThat(Session.run(toFile, "strip", "-o", at("plain.musicxml"), "-")
                        .out()
                        .size())
                .isZero();
        assertThat(folder.resolve("plain.musicxml")).hasSameBinaryContentAs(PLAIN);
    }

    @Test
    @DisplayName("a compressed score on standard input stays compressed")
    void compressedStream() throws IOException {
        byte[] packed = Archives.mxl(Files.readString(score), false);

        byte[] annotated = Session.run(packed, "annotate", "-").out().toByteArray();

        assertThat(annotated).startsWith('P', 'K');
        assertThat(Session.run(annotated, "strip", "-").out().toByteArray()).startsWith('P', 'K');
    }

    @Test
    @DisplayName("quiet says nothing; otherwise people are told on standard error, never among the results")
    void whoIsTold() {
        assertThat(done("annotate", score.toString(), "-o", at("a.musicxml"), "--quiet"))
                .satisfies(session -> assertThat(session.err()).isEmpty())
                .satisfies(session -> assertThat(session.text()).isEmpty());
        assertThat(done("strip", at("a.musicxml"), "--quiet").err()).isEmpty();
        assertThat(done("annotate", score.toString(), "-o", "-").text()).doesNotContain("home:");
        assertThat(done("annotate", score.toString()).err()).contains("home:", "note:");
    }

    @Test
    @DisplayName("findings on standard output are all that stands there, and the score is written too")
    void findingsOnStandardOutput() {
        Session session = done("annotate", score.toString(), "--findings", "-");

        assertThat(JsonParser.parseString(session.text())
                        .getAsJsonObject()
                        .get("score")
                        .getAsString())
                .isEqualTo(score.toString());
        assertThat(folder.resolve("song-annotated.musicxml")).isNotEmptyFile();
    }

    @Test
    @DisplayName("where one of two results could not be written, neither is")
    void bothOrNone() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken.json"), "mine");

        refused(Session.run("annotate", score.toString(), "--findings", taken.toString()), "exists already");
        refused(Session.run("annotate", score.toString(), "--findings", at("none/f.json")), "does not exist");

        assertThat(names()).containsExactly("song.musicxml", "taken.json");
        assertThat(taken).hasContent("mine");
        done("annotate", score.toString(), "--findings", taken.toString(), "--replace");
        assertThat(taken).content().contains("fretgloss-findings/1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"song.musicxml", "./song.musicxml", "link.musicxml"})
    @DisplayName("findings never take the place of the score, whatever it is called and whatever may be replaced")
    void findingsSpareTheScore(String name) throws IOException {
        Files.createSymbolicLink(folder.resolve("link.musicxml"), score);

        refused(Session.run("annotate", score.toString(), "--findings", at(name), "--replace"), "of their own");

        assertThat(score).hasSameBinaryContentAs(PLAIN);
    }

    @Test
    @DisplayName("a score stays in its container, in both commands")
    void containers() throws IOException {
        Path packed = Files.write(folder.resolve("song.mxl"), Archives.mxl(Files.readString(score), false));

        for (String command : List.of("annotate", "strip")) {
            refused(Session.run(command, packed.toString(), "-o", at("x.musicxml")), "compressed", ".mxl");
            refused(Session.run(command, packed.toString(), "-o", at("x.XML")), "compressed", ".mxl");
            refused(Session.run(command, score.toString(), "-o", at("x.mxl")), "not compressed", ".musicxml");
        }
        assertThat(names()).containsExactly("song.musicxml", "song.mxl");
    }

    @Test
    @DisplayName("strip replaces only when asked, and leaves a score without our lines as it is")
    void stripping() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken.musicxml"), "mine");

        refused(Session.run("strip", score.toString(), "-o", taken.toString()), "exists already", "--replace");
        assertThat(taken).hasContent("mine");
        done("strip", score.toString(), "-o", taken.toString(), "--replace");
        assertThat(taken).hasSameBinaryContentAs(PLAIN);
    }
}
