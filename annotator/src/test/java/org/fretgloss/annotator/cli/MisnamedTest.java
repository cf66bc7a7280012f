package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fretgloss.annotator.file.Archives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scores whose name says another container than their bytes: the bytes decide, and the output is named by them. */
class MisnamedTest {

    private static final Path GOOD = Path.of("../fixtures/plain-clothes/score.musicxml");

    private static final String NOT_COMPRESSED = "the score is not compressed, though its name says otherwise";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @Test
    void aPlainScoreGivesAPlainOne() throws IOException {
        Path score = Files.copy(GOOD, folder.resolve("solo.mxl"));
        Path annotated = folder.resolve("solo-annotated.musicxml");

        Session session = Session.run("annotate", score.toString());

        assertThat(session.exit()).as(session.err()).isZero();
        assertThat(session.err())
                .startsWith(score + " → " + annotated + "\n")
                .contains("  note: " + NOT_COMPRESSED + "\n");
        assertThat(annotated).content().startsWith("<?xml");
        assertThat(Session.run("strip", annotated.toString()).exit()).isZero();
        assertThat(folder.resolve("solo-annotated-plain.musicxml")).hasSameBinaryContentAs(GOOD);
    }

    @Test
    void aCompressedScoreGivesACompressedOne() throws IOException {
        byte[] packed = Archives.mxl(Files.readString(GOOD), false);
        Path score = Files.write(folder.resolve("solo.XML"), packed);
        Path stripped = folder.resolve("solo-annotated-plain.mxl");

        assertThat(Session.run("annotate", score.toString()).err())
                .contains("note: the score is compressed, though its name says otherwise");
        assertThat(Session.run("strip", folder.resolve("solo-annotated.mxl").toString())
                        .err())
                .doesNotContain("otherwise");

        assertThat(stripped).hasBinaryContent(packed);
    }

    @Test
    void anOutputIsNamedAsTheBytesOfTheInputAre() throws IOException {
        Path score = Files.copy(GOOD, folder.resolve("solo.mxl"));
        Path wrong = folder.resolve("out.mxl");

        Session session = Session.run("annotate", score.toString(), "-o", wrong.toString());

        assertThat(session.exit()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(session.err())
                .isEqualTo("fretgloss: " + score + ": the output " + wrong
                        + " cannot be written: the input is not compressed (though its name says otherwise), so name the"
                        + " output .musicxml\n");
        assertThat(wrong).doesNotExist();
    }

    @Test
    void checkSaysItToo() throws IOException {
        Path score = Files.copy(GOOD, folder.resolve("solo.mxl"));
        assertThat(Session.run("check", score.toString()).err()).contains(NOT_COMPRESSED);
    }

    @Test
    void aNameWithoutAnEndingSaysNothing() throws IOException {
        Path score = Files.copy(GOOD, folder.resolve("solo"));
        assertThat(Session.run("annotate", score.toString()).err()).doesNotContain("otherwise");
        assertThat(folder.resolve("solo-annotated")).exists();
    }
}
