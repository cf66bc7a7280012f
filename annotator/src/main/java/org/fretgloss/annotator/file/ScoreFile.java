package org.fretgloss.annotator.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A score as it lies on a disk: plain MusicXML, or compressed with other files. Which it is, its content tells, not its
 * name.
 */
public final class ScoreFile {

    private final String name;
    private final Optional<MxlArchive> archive;
    private final DecodedText decoded;
    private final List<String> notices;

    private ScoreFile(String name, Optional<MxlArchive> archive, DecodedText decoded) {
        this.name = name;
        this.archive = archive;
        this.decoded = decoded;
        this.notices = Stream.of(
                        misnamed().stream(),
                        archive.map(MxlArchive::notices).orElse(List.of()).stream(),
                        decoded.contradiction().stream())
                .flatMap(told -> told)
                .toList();
    }

    /**
     * Reads a score.
     *
     * @throws ScoreException if there is no such file, it cannot be read, or it holds no text of a score
     */
    public static ScoreFile read(Path path) throws ScoreException {
        if (Files.isDirectory(path)) {
            throw new ScoreException("this is a folder; name a score in it");
        }
        if (!Files.exists(path)) {
            throw new ScoreException("there is no such file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            Memory.requireRoomFor(Files.size(path));
            return read(path.toString(), in);
        } catch (IOException e) {
            throw new ScoreException("the file cannot be read: " + IoReason.of(e), e);
        }
    }

    /**
     * Reads a score from a stream, but never more than can be a score: a device has no size and never ends.
     *
     * @param name what the score is called in reports
     * @throws ScoreException if it holds no text of a score
     * @throws IOException if it cannot be read
     */
    public static ScoreFile read(String name, InputStream in) throws ScoreException, IOException {
        byte[] bytes = in.readNBytes(Memory.mostBytes() + 1);
        if (bytes.length > Memory.mostBytes()) {
            throw Memory.tooLong(bytes.length);
        }
        return of(name, bytes);
    }

    /**
     * A score from its bytes.
     *
     * @param name what the score is called in reports
     * @throws ScoreException if the bytes hold no text of a score
     */
    public static ScoreFile of(String name, byte[] bytes) throws ScoreException {
        return Memory.guard(() -> decoded(name, bytes));
    }

    private static ScoreFile decoded(String name, byte[] bytes) throws ScoreException {
        Optional<MxlArchive> archive =
                MxlArchive.isZip(bytes) ? Optional.of(MxlArchive.of(bytes, Memory.mostBytes())) : Optional.empty();
        DecodedText decoded = DecodedText.of(archive.map(MxlArchive::score).orElse(bytes));
        if (decoded.text().isBlank()) {
            throw new ScoreException("the file is empty; export the score again");
        }
        return new ScoreFile(name, archive, decoded);
    }

    /** What the score is called in reports. */
    public String name() {
        return name;
    }

    /** The score's text, without a byte order mark. */
    public String text() {
        return decoded.text();
    }

    /** What the score lies in. */
    public Container container() {
        return archive.isPresent() ? Container.COMPRESSED : Container.PLAIN;
    }

    private Optional<String> misnamed() {
        return container().isDeniedBy(name)
                ? Optional.of("the score is " + container() + ", though its name says otherwise")
                : Optional.empty();
    }

    /** What the user should know about the file, such as a declared encoding that is not the real one. */
    public List<String> notices() {
        return notices;
    }

    /**
     * The characters that text inserted into this file may use; any other must be a character reference. Where the file
     * misnames its encoding these are ASCII, so that every program reads what was inserted, whatever it believes.
     */
    public Charset insertable() {
        return decoded.undisputed();
    }

    /**
     * The bytes of this file with another text in the place of its own. In a compressed score all other entries keep
     * their packed bytes.
     *
     * @throws IllegalArgumentException if the file's encoding cannot hold a character of the text
     */
    public byte[] withText(String text) {
        byte[] score = decoded.encoding().encode(text);
        return archive.map(whole -> whole.withScore(score)).orElse(score);
    }
}
