package org.fretgloss.annotator.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/**
 * A file that is written whole or not at all: its bytes lie beside the target, down to the disk, before they take the
 * target's name. Several files of which none shall stand alone are all prepared before the first is placed.
 */
public final class WholeFile implements AutoCloseable {

    private final Path target;
    private final Path place;
    private final Path fresh;
    private final boolean replace;

    private WholeFile(Path target, Path place, Path fresh, boolean replace) {
        this.target = target;
        this.place = place;
        this.fresh = fresh;
        this.replace = replace;
    }

    /**
     * Writes a file.
     *
     * @param target where the file will stand; its folder must exist
     * @param replace whether a file that stands there may be replaced; it keeps its permissions
     * @throws ScoreException if the file cannot be written; nothing is left behind
     */
    public static void write(Path target, byte[] bytes, boolean replace) throws ScoreException {
        try (WholeFile file = prepare(target, bytes, replace)) {
            file.place();
        }
    }

    /**
     * Writes a file's bytes beside its target, under a name of their own.
     *
     * @throws ScoreException if they cannot be written; nothing is left behind
     * @see #write
     */
    public static WholeFile prepare(Path target, byte[] bytes, boolean replace) throws ScoreException {
        check(target, replace);
        try {
            Path place = Files.exists(target) ? target.toRealPath() : target;
            Path fresh = folderOf(place).resolve(".fretgloss-" + UUID.randomUUID() + ".part");
            try {
                fill(fresh, bytes);
            } catch (IOException e) {
                Files.deleteIfExists(fresh);
                throw e;
            }
            return new WholeFile(target, place, fresh, replace);
        } catch (IOException e) {
            throw unwritten(target, reason(target, bytes.length, e), e);
        }
    }

    /**
     * Gives the prepared file its target's name.
     *
     * @throws ScoreException if it cannot take it
     */
    public void place() throws ScoreException {
        try {
            move();
        } catch (FileAlreadyExistsException e) {
            throw exists(target);
        } catch (IOException e) {
            throw unwritten(target, IoReason.of(e), e);
        }
    }

    /** Takes away what was prepared and not placed. */
    @Override
    public void close() throws ScoreException {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            throw new ScoreException("'" + fresh + "' was left behind: " + IoReason.of(e) + "; delete it", e);
        }
    }

    /**
     * Refuses a target that could not be written, before any work is done for it.
     *
     * @throws ScoreException if its folder is missing, or something stands there that may not be replaced
     */
    public static void check(Path target, boolean replace) throws ScoreException {
        Path folder = folderOf(target);
        if (!Files.exists(folder)) {
            throw new ScoreException("the folder '" + folder + "' does not exist; make it first");
        }
        if (!Files.isDirectory(folder)) {
            throw new ScoreException("'" + folder + "' is no folder; choose another place");
        }
        if (Files.isDirectory(target)) {
            throw new ScoreException("'" + target + "' is a folder; name a file in it");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new ScoreException("'" + target + "' is no ordinary file; choose another name");
        }
        if (Files.exists(target) && !replace) {
            throw exists(target);
        }
    }

    private static ScoreException exists(Path target) {
        return new ScoreException("'" + target + "' exists already; choose another name, or --replace it");
    }

    private static ScoreException unwritten(Path target, String reason, IOException cause) {
        return new ScoreException("'" + target + "' cannot be written: " + reason, cause);
    }

    private static Path folderOf(Path target) {
        Path parent = target.getParent();
        return parent == null ? Path.of("").toAbsolutePath() : parent;
    }

    private static void fill(Path fresh, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private void move() throws IOException {
        if (replace) {
            keepPermissions(place, fresh);
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } else {
            Files.move(fresh, place);
        }
    }

    private static void keepPermissions(Path place, Path fresh) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(place, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (from != null && to != null && Files.exists(place)) {
            to.setPermissions(from.readAttributes().permissions());
        }
    }

    private static String reason(Path target, int needed, IOException failure) {
        return freeBytesFor(target) < needed ? "the disk is full" : IoReason.of(failure);
    }

    private static long freeBytesFor(Path target) {
        try {
            return Files.getFileStore(folderOf(target)).getUsableSpace();
        } catch (IOException e) {
            return Long.MAX_VALUE;
        }
    }
}
