package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

    private static final byte[] BYTES = {1, 2, 3};

    @TempDir
    private Path folder;

    private void onlyFiles(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder(names);
        }
    }

    @Test
    @DisplayName("a new file, and nothing beside it")
    void newFile() throws Exception {
        WholeFile.write(folder.resolve("out"), BYTES, false);

        assertThat(folder.resolve("out")).hasBinaryContent(BYTES);
        onlyFiles("out");
    }

    @Test
    @DisplayName("what is prepared stands nowhere until it is placed, and is taken away if it never is")
    void prepared() throws Exception {
        Path old = Files.writeString(folder.resolve("old"), "old");

        try (WholeFile fresh = WholeFile.prepare(folder.resolve("out"), BYTES, false);
                WholeFile left = WholeFile.prepare(old, BYTES, true)) {
            assertThat(folder.resolve("out")).doesNotExist();
            fresh.place();
            assertThat(folder.resolve("out")).hasBinaryContent(BYTES);
            assertThat(left).isNotNull();
        }

        assertThat(old).hasContent("old");
        onlyFiles("old", "out");
    }

    @Test
    @DisplayName("a file that came to stand there meanwhile is not replaced unasked")
    void meanwhile() throws Exception {
        try (WholeFile late = WholeFile.prepare(folder.resolve("out"), BYTES, false)) {
            Files.writeString(folder.resolve("out"), "theirs");

            assertThatThrownBy(late::place).isInstanceOf(ScoreException.class).hasMessageContaining("exists already");
        }

        assertThat(folder.resolve("out")).hasContent("theirs");
        onlyFiles("out");
    }

    @Test
    @DisplayName("a new file has the permissions that any new file gets")
    void permissions() throws Exception {
        Path usual = Files.createFile(folder.resolve("usual"));
        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();

        WholeFile.write(folder.resolve("out"), BYTES, false);

        assertThat(Files.getPosixFilePermissions(folder.resolve("out")))
                .isEqualTo(Files.getPosixFilePermissions(usual));
    }

    @Test
    @DisplayName("an existing file is replaced only on request, and keeps its permissions")
    void existing() throws Exception {
        Path out = Files.writeString(folder.resolve("out"), "old");

        assertThatThrownBy(() -> WholeFile.write(out, BYTES, false))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("exists already")
                .hasMessageContaining("--replace");
        assertThat(out).hasContent("old");

        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();
        Set<PosixFilePermission> own = PosixFilePermissions.fromString("rw-rw----");
        Files.setPosixFilePermissions(out, own);
        WholeFile.write(out, BYTES, true);
        assertThat(out).hasBinaryContent(BYTES);
        assertThat(Files.getPosixFilePermissions(out)).isEqualTo(own);
        onlyFiles("out");
    }

    @Test
    @DisplayName("a replaced link stays a link; what it points to is replaced")
    void link() throws Exception {
        Path real = Files.writeString(folder.resolve("real"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), real);

        WholeFile.write(link, BYTES, true);

        assertThat(link).isSymbolicLink();
        assertThat(real).hasBinaryContent(BYTES);
    }

    @Test
    @DisplayName("no folder, a file for a folder, a folder for a file: clear words, nothing written")
    void places() throws Exception {
        Path file = Files.createFile(folder.resolve("file"));
        Path inner = Files.createDirectory(folder.resolve("inner"));

        assertThatThrownBy(() -> WholeFile.write(folder.resolve("none/out"), BYTES, false))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("does not exist");
        assertThatThrownBy(() -> WholeFile.write(file.resolve("out"), BYTES, false))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("no folder");
        assertThatThrownBy(() -> WholeFile.write(inner, BYTES, true))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("is a folder");
        onlyFiles("file", "inner");
    }

    @Test
    @DisplayName("a file that cannot take its name leaves nothing behind")
    void nameTooLong() throws Exception {
        Path target = folder.resolve("x".repeat(300));

        assertThatThrownBy(() -> WholeFile.write(target, BYTES, false))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("cannot be written");
        onlyFiles();
    }

    @Test
    @DisplayName("a folder that may not be written in")
    void readOnly() throws Exception {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeThat(Files.isWritable(closed))
                .as("the superuser may write anywhere")
                .isFalse();

        assertThatThrownBy(() -> WholeFile.write(closed.resolve("out"), BYTES, false))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("no permission");
        assertThat(closed).isEmptyDirectory();
    }

    @Test
    @DisplayName("a device is no place for a score")
    void device() {
        Path device = Path.of("/dev/full");
        assumeThat(device).exists();

        assertThatThrownBy(() -> WholeFile.write(device, BYTES, true))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("no ordinary file");
    }
}
