package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk of one page, where the system lets a test have one, leaves no half score behind. */
class FullDiskTest {

    private static final Path SCORE = Path.of("../fixtures/plain-clothes/score.musicxml");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    private Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Path disk;

    private boolean mounted;

    @BeforeEach
    void mountASmallDisk() throws Exception {
        disk = Files.createDirectory(folder.resolve("disk"));
        mounted = succeeds("mount", "-t", "tmpfs", "-o", "size=4k", "tmpfs", disk.toString());
        assumeThat(mounted).as("only the superuser may mount a small disk").isTrue();
    }

    @AfterEach
    void unmountIt() throws Exception {
        if (mounted) {
            assertThat(succeeds("umount", disk.toString())).isTrue();
        }
    }

    private static boolean succeeds(String... command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getInputStream().transferTo(OutputStream.nullOutputStream());
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void nothingIsLeftOnAFullDisk() {
        for (String command : new String[] {"annotate", "strip"}) {
            Session session = Session.run(
                    command,
                    SCORE.toString(),
                    "-o",
                    disk.resolve("out.musicxml").toString());

            assertThat(session.exit()).isEqualTo(2);
            assertThat(session.err().lines()).singleElement().asString().contains("the disk is full");
            assertThat(disk).isEmptyDirectory();
        }
    }

    @Test
    void whatStoodThereStays() throws IOException {
        Path old = Files.writeString(disk.resolve("out.musicxml"), "old");

        Session session = Session.run("annotate", SCORE.toString(), "-o", old.toString(), "--replace");

        assertThat(session.exit()).isEqualTo(2);
        assertThat(old).hasContent("old");
        assertThat(disk).isDirectoryNotContaining(file -> !file.equals(old));
    }

    @Test
    void aScoreIsNotWrittenWithoutItsFindings() {
        Path out = folder.resolve("out.musicxml");

        refusedWithFindingsOnTheDisk(out.toString());

        assertThat(folder).isDirectoryNotContaining(file -> !file.equals(disk));
        assertThat(refusedWithFindingsOnTheDisk("-").out().size()).isZero();
    }

    @Test
    void anOlderResultStaysWhereItsFindingsCannotFollow() throws IOException {
        Path old = Files.writeString(folder.resolve("out.musicxml"), "old");

        refusedWithFindingsOnTheDisk(old.toString());

        assertThat(old).hasContent("old");
        assertThat(folder).isDirectoryNotContaining(file -> !file.equals(disk) && !file.equals(old));
    }

    private Session refusedWithFindingsOnTheDisk(String out) {
        String findings = disk.resolve("findings.json").toString();

        Session session =
                Session.run("annotate", SCORE.toString(), "-o", out, "--findings", findings, "--replace", "--quiet");

        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err().lines())
                .singleElement()
                .asString()
                .contains(findings + "' cannot be written", "the disk is full");
        assertThat(disk).isEmptyDirectory();
        return session;
    }
}
