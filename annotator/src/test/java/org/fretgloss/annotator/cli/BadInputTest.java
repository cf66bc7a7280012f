package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Bad input gets one clear line, exit 2, no stack trace and no output; the input stays as it was. */
class BadInputTest {

    private static final Path GOOD = Path.of("../fixtures/plain-clothes/score.musicxml");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    @TestFactory
    Stream<DynamicTest> files() throws IOException {
        byte[] good = Files.readAllBytes(GOOD);
        return Stream.of(
                file("empty.musicxml", new byte[0], "empty"),
                file("text.musicxml", BadInput.text("hello, this is no score\n"), "no MusicXML"),
                file("cut.musicxml", Arrays.copyOf(good, good.length / 2), "breaks off"),
                file("noise.mxl", new byte[] {(byte) 0xC3, 3, (byte) 0xFE, 0, (byte) 0x8D}, "this is no MusicXML file"),
                file("packed.musicxml", gzip(good), "this is no MusicXML file"),
                file("page.xml", BadInput.text("<html><body/></html>"), "<html>"),
                file("noscore.mxl", BadInput.archiveWithoutScore(), "META-INF/container.xml"),
                file("missing.mxl", BadInput.archiveNaming("score.xml"), "'score.xml' is missing"),
                file("leaving.mxl", BadInput.archiveNaming("../../score.xml"), "outside itself"),
                file("zipbomb.mxl", BadInput.zipBomb(), "unpacks to more than"),
                file("bomb.musicxml", BadInput.entityBomb(), "entities"),
                file("external.musicxml", BadInput.externalEntity(), "another file"),
                file("deep.musicxml", BadInput.deep(200_000), "nested more than"),
                file("silent.musicxml", BadInput.withoutNotes(), "no notes"));
    }

    @TestFactory
    Stream<DynamicTest> places() throws IOException {
        Path score = Files.copy(GOOD, folder.resolve("good.musicxml"));
        Path taken = Files.writeString(folder.resolve("taken.musicxml"), "mine");
        String file = score.toString();
        Stream<DynamicTest> tests = Stream.of(
                refused(
                        "no such file",
                        "no such file",
                        folder.resolve("nosuch.musicxml").toString()),
                refused("a folder", "folder", folder.toString()),
                refused(
                        "no output folder",
                        "does not exist",
                        file,
                        "-o",
                        folder.resolve("no/x.musicxml").toString()),
                refused("the output exists", "exists already", file, "-o", taken.toString()),
                refused(
                        "another container",
                        "not compressed",
                        file,
                        "-o",
                        folder.resolve("x.mxl").toString()),
                refused("findings exist", "exists already", file, "--findings", taken.toString()),
                refused("two results", "both go to standard output", file, "-o", "-", "--findings", "-"),
                refused("findings into the score", "a file of their own", file, "--findings", file, "--replace"),
                refused("a line that is none", "'phrase'", file, "--add-lines", "phrase"),
                refused("a key", "'Am' is no key", file, "--form", "minor-twelve-bar Am"),
                refused("a tonic alone", "names no scale", file, "--home", "A"),
                refused("a part that is not there", "'Tuba'", file, "--part", "Tuba"),
                refused("a scale", "did you mean 'dorian'", file, "--home", "A dorain"),
                refused("a tonic", "no tonic", file, "--home", "H blues"),
                refused("a chord", "bar 2", file, "--chords", "A7 | Xq"),
                refused("a form", "did you mean 'twelve-bar'", file, "--form", "twelve-bra A"),
                refused("a form without key", "one value", file, "--form", "twelve-bar"),
                refused("chords twice", "give only one", file, "--form", "twelve-bar A", "--chords", "A7"),
                refused("a bar that is not there", "bars 1 to 9", file, "--chords", "A7", "--form-start", "77"),
                refused("a form's start alone", "--form-start", file, "--form-start", "2"),
                refused("a line", "did you mean 'box'", file, "--lines", "boxx"),
                refused("no beats", "--space takes 1/2 to 64 beats", file, "--space", "0"),
                refused("too many beats", "1/2 to 64", file, "--space", "999"),
                refused("an option", "--bogus", file, "--bogus"));
        DynamicTest untouched = dynamicTest("what stood there stays", () -> {
            assertThat(taken).hasContent("mine");
            assertThat(score).hasSameBinaryContentAs(GOOD);
        });
        return Stream.concat(tests, Stream.of(untouched));
    }

    @TestFactory
    Stream<DynamicTest> commands() {
        return Stream.of(
                dynamicTest("none", () -> assertRefused("a command is missing")),
                dynamicTest("unknown", () -> assertRefused("anotate", "anotate", GOOD.toString())),
                dynamicTest("unknown rule", () -> assertRefused("did you mean 'bend'", "rules", "bnd")),
                dynamicTest("strip nothing", () -> assertRefused("no such file", "strip", "nosuch.musicxml")));
    }

    private static byte[] gzip(byte[] content) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(content);
        }
        return packed.toByteArray();
    }

    private DynamicTest file(String name, byte[] content, String line) {
        return dynamicTest(name, () -> {
            Path file = Files.write(folder.resolve(name), content);
            assertRefused(line, "annotate", file.toString());
            assertThat(file).hasBinaryContent(content);
        });
    }

    private DynamicTest refused(String name, String line, String... arguments) {
        return dynamicTest(
                name,
                () -> assertRefused(
                        line,
                        Stream.concat(Stream.of("annotate"), Arrays.stream(arguments))
                                .toArray(String[]::new)));
    }

    private void assertRefused(String line, String... arguments) throws IOException {
        List<String> before = names();
        Session session = Session.run(arguments);
        assertThat(session.exit()).as(session.err()).isEqualTo(2);
        assertThat(session.err().lines())
                .singleElement()
                .asString()
                .startsWith("fretgloss: ")
                .contains(line);
        assertThat(session.out().size()).isZero();
        assertThat(names()).isEqualTo(before);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString).sorted().toList();
        }
    }
}
