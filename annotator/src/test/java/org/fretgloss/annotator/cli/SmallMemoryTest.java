package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fretgloss.annotator.file.ScoreTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scores too large for the memory of the program, which runs in a process of its own: one clear line, never a trace. */
class SmallMemoryTest {

    private static final int HEAP_MB = 64;
    private static final int SECONDS = 60;
    private static final String NOTE =
            "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>";

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

    private String refusal(String bar) throws IOException, InterruptedException {
        Path score = Files.writeString(folder.resolve("score.musicxml"), ScoreTexts.partwise(bar));
        Path told = folder.resolve("told.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + HEAP_MB + "m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "annotate",
                        score.toString())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();

        assertThat(process.exitValue()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(folder.resolve("score-annotated.musicxml")).doesNotExist();
        List<String> lines = Files.readAllLines(told);
        assertThat(lines).hasSize(1);
        return lines.get(0);
    }
}
