package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.Archives;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Scores that are broken in many places, and scores that reach for what is not theirs. */
class HostileInputTest {

    private static final Path GOOD = Path.of("../fixtures/plain-clothes/score.musicxml");
    private static final String SECRET = "nobody's business";
    private static final int CUTS = 40;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Path secret;

    @BeforeEach
    void keepASecret() throws IOException {
        secret = Files.writeString(folder.resolve("secret.txt"), SECRET);
    }

    @TestFactory
    Stream<DynamicTest> aScoreCutOffAnywhere() throws IOException {
        byte[] good = Files.readAllBytes(GOOD);
        return IntStream.range(1, CUTS)
                .map(i -> good.length * i / CUTS)
                .mapToObj(length -> dynamicTest(
                        "after " + length + " bytes",
                        () -> assertRefused("cut.musicxml", Arrays.copyOf(good, length))));
    }

    @TestFactory
    Stream<DynamicTest> anArchiveCutOffAnywhere() throws IOException {
        byte[] good = Archives.mxl(Files.readString(GOOD), false);
        return IntStream.range(1, CUTS)
                .map(i -> good.length * i / CUTS)
                .mapToObj(length -> dynamicTest(
                        "after " + length + " bytes", () -> assertRefused("cut.mxl", Arrays.copyOf(good, length))));
    }

    @TestFactory
    Stream<DynamicTest> archivesThatLeaveThemselves() {
        return Stream.of(
                        "../score.xml",
                        "a/../../score.xml",
                        "/etc/hostname",
                        "..\\..\\score.xml",
                        "C:/score.xml",
                        "file:///etc/hostname",
                        "",
                        "no/such/entry.xml")
                .map(path -> dynamicTest(
                        "'" + path + "'", () -> assertRefused("leaving.mxl", BadInput.archiveNaming(path))));
    }

    @TestFactory
    Stream<DynamicTest> archivesWithoutAScore() throws IOException {
        String score = Files.readString(GOOD);
        return Stream.of(
                refused("no container and two scores", Map.of("score.xml", score, "other.xml", score)),
                refused("an empty container", Map.of(Archives.CONTAINER, "", "score.xml", score)),
                refused("a container that is no XML", Map.of(Archives.CONTAINER, "score.xml", "score.xml", score)),
                refused(
                        "a container that names nothing",
                        Map.of(Archives.CONTAINER, "<container/>", "score.xml", score)),
                refused("an empty score", container("")),
                refused("a score that is no XML", container("la la la")),
                refused("a score that is a page", container("<html/>")),
                refused("a score without notes", container("<score-partwise><part-list/></score-partwise>")));
    }

    private static Map<String, String> container(String score) {
        return Map.of(Archives.CONTAINER, Archives.container("score.xml"), "score.xml", score);
    }

    private DynamicTest refused(String name, Map<String, String> texts) {
        return dynamicTest(name, () -> {
            Map<String, byte[]> entries = new LinkedHashMap<>();
            texts.forEach((entry, text) -> entries.put(entry, Archives.utf8(text)));
            assertRefused("odd.mxl", Archives.zip(entries, false));
        });
    }

    @TestFactory
    Stream<DynamicTest> scoresMadeToDoHarm() throws IOException {
        String good = Files.readString(GOOD);
        String deep = "<a>".repeat(200_000) + "</a>".repeat(200_000);
        return Stream.of(
                harmful("an entity within itself", titled("<!ENTITY x \"&x;\">")),
                harmful("an entity of many letters, many times", titled("<!ENTITY x \"" + "y".repeat(50_000) + "\">")),
                harmful("a file as an entity", titled("<!ENTITY x SYSTEM \"" + secret.toUri() + "\">")),
                harmful(
                        "a file through a parameter",
                        titled("<!ENTITY % f SYSTEM \"" + secret.toUri() + "\"> %f; <!ENTITY x \"\">")),
                harmful("nested in a note", good.replaceFirst("</note>", deep + "</note>")),
                harmful("nested in the heading", good.replaceFirst("<part-list>", deep + "<part-list>")),
                harmful("another program's songbook", "<opus><title>Songs</title></opus>"));
    }

    /** A good score whose title is an entity of this document type. */
    private static String titled(String subset) throws IOException {
        return Files.readString(GOOD)
                .replaceFirst("<!DOCTYPE[^>]*>\\s*", "")
                .replaceFirst(
                        "<score-partwise[^>]*>",
                        "<!DOCTYPE score-partwise [" + subset.replace("$", "\\$")
                                + "]>$0<movement-title>&x;&x;</movement-title>");
    }

    private DynamicTest harmful(String name, String score) {
        return dynamicTest(name, () -> assertRefused("harmful.musicxml", Archives.utf8(score)));
    }

    private void assertRefused(String name, byte[] content) throws IOException {
        Path file = Files.write(folder.resolve(name), content);
        List<Path> before = files();

        Session session = Session.run("annotate", file.toString());

        assertThat(session.exit()).as(session.err()).isEqualTo(2);
        assertThat(session.err().lines())
                .singleElement()
                .asString()
                .startsWith("fretgloss: " + file + ": ")
                .doesNotContain("Exception", "\tat ", "null", SECRET);
        assertThat(session.text()).isEmpty();
        assertThat(files()).isEqualTo(before);
        assertThat(file).hasBinaryContent(content);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
