package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.Archives;
import org.fretgloss.annotator.file.ScoreTexts;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Scores too large for the memory of the program, which runs in a process of its own: one clear line, never a trace. */
class SmallMemoryTest {

    private static final int HEAP_MB = 64;

    /** Memory in which the longest score that is ever read would have room. */
    private static final int ENOUGH_MB = 2_048;

    private static final long MOST_BYTES = 128L << 20;
    private static final int SECONDS = 180;
    private static final String NOTE =
            "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>";

    /** As exporters write it. */
    private static final String EXPORTED = """
                  <note default-x="112.61" default-y="-35.00" color="#000000">
                    <pitch>
                      <step>%s</step>
                      <octave>%s</octave>
                    </pitch>
                    <duration>1</duration>
                    <voice>1</voice>
                    <type>quarter</type>
                    <stem default-y="-72.50">down</stem>
                    <notations>
                      <technical>
                        <string placement="above">%s</string>
                        <fret placement="above">%s</fret>
                      </technical>
                    </notations>
                  </note>
            """;

    /** A bar of A minor pentatonic: step, octave, string, fret. */
    private static final String BAR = Stream.of("A 3 4 7", "C 4 3 5", "D 4 3 7", "G 3 4 5")
            .map(note -> EXPORTED.formatted((Object[]) note.split(" ", -1)))
            .collect(Collectors.joining());

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    /** What there may be very much of in a bar, and a piece of it that comes again and again. */
    private static final Map<String, String> SORTS = Map.of(
            "notes without frets", NOTE,
            "empty notes", "<note/>",
            "chord symbols", "<harmony><root><root-step>D</root-step></root><kind>dominant</kind></harmony>",
            "bars", "</measure><measure>",
            "lyrics", NOTE.replace("</note>", "<lyric><text>a</text></lyric>".repeat(30) + "</note>"),
            "techniques",
                    NOTE.replace(
                            "</note>",
                            "<notations><technical>"
                                    + "<bend><bend-alter>1</bend-alter><release/></bend>".repeat(30)
                                    + "</technical></notations></note>"),
            "elements that nobody knows", "<x/>",
            "directions", "<direction><direction-type><words>P.M.</words></direction-type></direction>");

    /** Scores of one sort: one that nearly takes all the room is annotated, and one that takes little more is refused. */
    @TestFactory
    Stream<DynamicTest> isWeighedByWhatItHolds() {
        return SORTS.entrySet().stream()
                .map(sort -> dynamicTest(sort.getKey(), () -> {
                    int most = mostPieces(sort.getValue());
                    Path within = score(NOTE + sort.getValue().repeat((int) (0.95 * most)));

                    Run run = run(HEAP_MB, "annotate", "--replace", within.toString());

                    assertThat(run.exit()).as("%s", run.told()).isEqualTo(ExitCode.DONE.number());
                    Files.delete(folder.resolve("score-annotated.musicxml"));
                    assertThat(refusal(NOTE + sort.getValue().repeat((int) (1.05 * most))))
                            .contains("the score has ", "of memory a score of this kind may have about", "-Xmx1g");
                }));
    }

    @Test
    void aCompressedScoreIsWeighedByWhatItUnpacksTo() throws Exception {
        Path score = folder.resolve("score.mxl");
        String text = ScoreTexts.partwise(NOTE.repeat(2_000_000 / NOTE.length()));
        Files.write(
                score,
                Archives.zip(
                        Map.of(
                                Archives.CONTAINER,
                                Archives.utf8(Archives.container("score.xml")),
                                "score.xml",
                                Archives.utf8(text)),
                        false));

        Run run = run(HEAP_MB, "annotate", score.toString());

        assertThat(Files.size(score)).isLessThan(100_000);
        assertThat(run.exit()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.told()).singleElement().asString().contains("notes in 1 MB");
    }

    @Test
    void aScoreOfManyTimesTheMemoryIsRefused() throws Exception {
        assertThat(refusal(NOTE.repeat(12_000_000 / NOTE.length())))
                .contains("12 MB long", "at most 5 MB", "of memory", "export the solo's part alone", "-Xmx1g");
    }

    /** However much memory there is, it holds no score of more than 128 MB. */
    @Test
    void aFileLongerThanAnyScoreIsRefusedInAnyMemory() throws Exception {
        String tooLong = "128 MB are the most that is read; split the score, or export the solo's part alone";

        assertThat(told(ENOUGH_MB, sparse(MOST_BYTES + 1))).endsWith(": the score is 129 MB long, and " + tooLong);
        assertThat(told(HEAP_MB, sparse(MOST_BYTES + 1))).endsWith(": the score is 129 MB long, and " + tooLong);
        assertThat(told(ENOUGH_MB, sparse(MOST_BYTES))).doesNotContain("the most that is read");
    }

    @Test
    void whatHasNoSizeIsReadNoFurtherThanAScoreMayBeLong() throws Exception {
        Path endless = Path.of("/dev/zero");
        assumeThat(endless).exists();

        assertThat(told(ENOUGH_MB, endless))
                .endsWith(": the score is longer than 128 MB, the most that is read;"
                        + " split the score, or export the solo's part alone");
        assertThat(told(HEAP_MB, endless))
                .endsWith(": the score is longer than 5 MB, the most that is read in 61 MB of memory;"
                        + " export the solo's part alone, or give more memory, as with JAVA_OPTS=-Xmx1g");
    }

    @Test
    void moreMemoryIsAdvisedThanThereIs() throws Exception {
        assertThat(told(1_024, score(NOTE.repeat(224_200)))).endsWith("-Xmx2g");
    }

    /** A file of so many bytes, none of which takes room on the disk. */
    private Path sparse(long bytes) throws IOException {
        Path file = Files.write(folder.resolve("sparse"), new byte[0]);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(new byte[1]), bytes - 1);
        }
        return file;
    }

    private String told(int megabytes, Path score) throws IOException, InterruptedException {
        Run run = run(megabytes, "annotate", score.toString(), "-o", "none.musicxml");

        assertThat(run.exit()).as("%s", run.told()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.told()).hasSize(1);
        return run.told().get(0);
    }

    /** In half of this memory the same score would be refused for its notes. */
    @Test
    void aLongScoreThatFitsIsAnnotated() throws Exception {
        Path score = score(IntStream.rangeClosed(2, 12_000_000 / BAR.length())
                .mapToObj(number -> BAR + "</measure><measure number=\"" + number + "\">")
                .collect(Collectors.joining("", "", BAR)));
        Path annotated = folder.resolve("score-annotated.musicxml");
        Path plain = folder.resolve("plain.musicxml");

        Run run = run(384, "annotate", score.toString());

        assertThat(run.exit()).as("%s", run.told()).isEqualTo(ExitCode.DONE.number());
        assertThat(Files.size(annotated)).isGreaterThan(Files.size(score));
        assertThat(Session.run("strip", annotated.toString(), "-o", plain.toString())
                        .exit())
                .isZero();
        assertThat(plain).hasSameBinaryContentAs(score);
    }

    /** How many pieces there is room for, from what the refusal of many more tells. */
    private int mostPieces(String piece) throws IOException, InterruptedException {
        int many = 4_000_000 / piece.length();
        Matcher told = Pattern.compile("has ([\\d,]+) .* about ([\\d,]+)").matcher(refusal(piece.repeat(many)));
        assertThat(told.find()).isTrue();
        return (int) (many * number(told.group(2)) / number(told.group(1)));
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(",", ""));
    }

    private record Run(int exit, List<String> told) {}

    private Path score(String bar) throws IOException {
        return Files.writeString(folder.resolve("score.musicxml"), ScoreTexts.partwise(bar));
    }

    private String refusal(String bar) throws IOException, InterruptedException {
        Run run = run(HEAP_MB, "annotate", score(bar).toString());

        assertThat(run.exit()).isEqualTo(ExitCode.BAD_INPUT.number());
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(Path::getFileName).map(Path::toString))
                    .containsExactlyInAnyOrder("score.musicxml", "told.txt");
        }
        assertThat(run.told()).hasSize(1);
        return run.told().get(0);
    }

    private Run run(int megabytes, String... arguments) throws IOException, InterruptedException {
        Path told = folder.resolve("told.txt");
        Process process = new ProcessBuilder(Stream.concat(
                                Stream.of(
                                        Path.of(System.getProperty("java.home"), "bin", "java")
                                                .toString(),
                                        "-Xmx" + megabytes + "m",
                                        "-XX:+UseSerialGC",
                                        "-XX:TieredStopAtLevel=1",
                                        "-cp",
                                        System.getProperty("java.class.path"),
                                        Main.class.getName()),
                                Stream.of(arguments))
                        .toList())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readAllLines(told));
    }
}
