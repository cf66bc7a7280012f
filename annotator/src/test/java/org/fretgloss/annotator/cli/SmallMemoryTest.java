package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scores too large for the memory of the program, which runs in a process of its own: one clear line, never a trace. */
class SmallMemoryTest {

    private static final int HEAP_MB = 64;
    private static final int SECONDS = 60;
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

    @Test
    void isRefusedBeforehandWhereItsLengthTells() throws Exception {
        assertThat(refusal(NOTE.repeat(5_000_000 / NOTE.length())))
                .contains("longer than 3 MB", "of memory", "export the solo's part alone");
    }

    @Test
    void isRefusedInWordsWhereTheMemoryRunsOutOnTheWay() throws Exception {
        String tiny = "<note/>";

        assertThat(refusal(tiny.repeat(2_500_000 / tiny.length()))).contains("does not fit", "of memory");
    }

    @Test
    void aScoreOfManyTimesTheMemoryIsRefused() throws Exception {
        assertThat(refusal(NOTE.repeat(12_000_000 / NOTE.length()))).contains("longer than 3 MB");
    }

    /** In less than three quarters of this memory the same score would be refused for its length. */
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
