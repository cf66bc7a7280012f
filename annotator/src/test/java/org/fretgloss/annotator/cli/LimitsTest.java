package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.Archives;
import org.fretgloss.annotator.file.ScoreTexts;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each limit from both sides: what just stays within it is annotated, what goes beyond it is refused in one line. */
class LimitsTest {

    private static final String NOTE =
            "<note><pitch><step>A</step><octave>4</octave></pitch><duration>4</duration></note>";
    private static final String BEFORE = "<attributes><divisions>4</divisions></attributes>" + NOTE;
    private static final String AGAIN = "<backup><duration>4</duration></backup>" + NOTE;

    /** Levels above the content of a bar: score, part, bar. */
    private static final int LEVELS_OUTSIDE = 3;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @TestFactory
    Stream<DynamicTest> ofTheText() {
        return Stream.of(
                read("depth", bar(nested(200 - LEVELS_OUTSIDE))),
                refused("depth", bar(nested(201 - LEVELS_OUTSIDE)), "nested more than 200", "bar 1"),
                read("attributes", bar("<x" + attributes(500) + "/>")),
                refused("attributes", bar("<x" + attributes(501) + "/>"), "more than 500 attributes", "line 1, bar 1"),
                read("an attribute's length", bar("<x a='" + "y".repeat(1_000_000) + "'/>")),
                refused(
                        "an attribute's length",
                        bar("<x a='" + "y".repeat(1_100_000) + "'/>"),
                        "an attribute of more than 1048576 characters",
                        "line 1, bar 1"),
                read("a text's length", bar("<x>" + "y".repeat(2_000_000) + "</x>")),
                refused(
                        "a text's length",
                        bar("<x>" + "y".repeat(34_000_000) + "</x>"),
                        "a text of more than",
                        "line 1, bar 1"),
                read("notes at once", bar(AGAIN.repeat(199))),
                refused("notes at once", bar(AGAIN.repeat(400)), "more than 200 notes sound together", "bar 1"));
    }

    @TestFactory
    Stream<DynamicTest> ofTheParts() {
        return Stream.of(
                read("parts", parts(200)),
                refused("parts", parts(201), "201 parts", "at most 200"),
                read("bars left out", apart(200)),
                refused("bars left out", apart(250), "missing from 62250 bars", "at most 50000"));
    }

    @TestFactory
    Stream<DynamicTest> ofTheArchive() throws IOException {
        return Stream.of(
                read("entries", archive(filled(IntStream.range(0, 1_998).mapToObj(i -> "extra/" + i)))),
                refused(
                        "entries",
                        archive(filled(IntStream.range(0, 1_999).mapToObj(i -> "extra/" + i))),
                        "2001 entries",
                        "2000"),
                read("an entry's size", archive(Map.of("score.xml", text(bar("<!--" + noise(5_000_000) + "-->"))))),
                refused(
                        "an entry's size",
                        archive(Map.of("score.xml", text(bar("<!--" + "y".repeat(5_000_000) + "-->")))),
                        "'score.xml' unpacks to more than 4 MB"),
                refused(
                        "the container's size",
                        Archives.zip(
                                Map.of(
                                        Archives.CONTAINER,
                                        text(Archives.container("score.xml") + " ".repeat(1_100_000)),
                                        "score.xml",
                                        text(bar(""))),
                                false),
                        "container.xml' unpacks to more than 1 MB"),
                read("an entry's path", archive(filled(Stream.of("pictures/..cover.png", "../x", "a/../../x", "/x")))),
                read("the score's path", Archives.zip(scoreAt("a/..b/score.xml"), false)),
                refused("the score's path", Archives.zip(scoreAt("../x.xml"), false), "outside itself, '../x.xml'"),
                refused("the score's path", Archives.zip(scoreAt("a/../../x.xml"), false), "outside itself"),
                refused("the score's path", Archives.zip(scoreAt("/x.xml"), false), "outside itself"));
    }

    private DynamicTest read(String limit, String score) {
        return read(limit, text(score));
    }

    private DynamicTest read(String limit, byte[] score) {
        return dynamicTest(limit + ", within", () -> {
            Path file = Files.write(fresh().resolve("score"), score);
            Path annotated = file.resolveSibling("annotated");
            Path stripped = file.resolveSibling("stripped");

            Session session = Session.run("annotate", file.toString(), "-o", annotated.toString());

            assertThat(session.exit()).as(session.err()).isEqualTo(ExitCode.DONE.number());
            Session.run("strip", annotated.toString(), "-o", stripped.toString());
            assertThat(stripped).hasBinaryContent(score);
        });
    }

    private DynamicTest refused(String limit, String score, String... words) {
        return refused(limit, text(score), words);
    }

    private DynamicTest refused(String limit, byte[] score, String... words) {
        return dynamicTest(limit + ", beyond", () -> {
            Path file = Files.write(fresh().resolve("score"), score);

            Session session = Session.run("annotate", file.toString());

            assertThat(session.exit()).as(session.err()).isEqualTo(ExitCode.BAD_INPUT.number());
            assertThat(session.err().lines())
                    .singleElement()
                    .asString()
                    .startsWith("fretgloss: " + file + ": ")
                    .contains(words);
            assertThat(file.resolveSibling("")).isDirectoryNotContaining(other -> !other.equals(file));
        });
    }

    private Path fresh() throws IOException {
        return Files.createTempDirectory(folder, "limit");
    }

    private static String bar(String more) {
        return ScoreTexts.partwise(BEFORE + more);
    }

    /** Parts of one note each. */
    private static String parts(int count) {
        return score("score-partwise", count, "<part id='P%d'><measure number='1'>" + BEFORE + "</measure></part>");
    }

    /** A score by bars in which each part has a bar of its own. */
    private static String apart(int count) {
        return score("score-timewise", count, "<measure number='1'><part id='P%d'>" + BEFORE + "</part></measure>");
    }

    private static String score(String root, int parts, String each) {
        return "<" + root + " version='4.0'><part-list>" + numbered("<score-part id='P%d'/>", parts) + "</part-list>"
                + numbered(each, parts) + "</" + root + ">";
    }

    private static String numbered(String each, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> each.replace("%d", String.valueOf(i)))
                .collect(Collectors.joining());
    }

    private static String nested(int levels) {
        return "<x>".repeat(levels) + "</x>".repeat(levels);
    }

    private static String attributes(int count) {
        return IntStream.range(0, count).mapToObj(i -> " a" + i + "=''").collect(Collectors.joining());
    }

    /** Letters that do not shrink much when they are packed. */
    private static String noise(int length) {
        return new SplittableRandom(length)
                .ints(length, 'a', 'z' + 1)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** A score and, besides, entries of these names. */
    private static Map<String, byte[]> filled(Stream<String> names) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("score.xml", text(bar("")));
        names.forEach(name -> entries.put(name, new byte[0]));
        return entries;
    }

    /** An archive whose container names the score: one entry more than is given. */
    private static byte[] archive(Map<String, byte[]> more) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put(Archives.CONTAINER, text(Archives.container("score.xml")));
        entries.putAll(more);
        return Archives.zip(entries, false);
    }

    private static Map<String, byte[]> scoreAt(String path) {
        return Map.of(Archives.CONTAINER, text(Archives.container(path)), path, text(bar("")));
    }

    private static byte[] text(String text) {
        return Archives.utf8(text);
    }
}
