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

    /** The longest file and the longest score text that are read; a symphony needs a fifth of it. */
    public static final int MAX_BYTES = 1 << 27;

    private final String name;
    private final Optional<MxlArchive> archive;
    private final DecodedText decoded;
    private final List<String> notices;

    private ScoreFile(String name, Optional<MxlArchive> archive, DecodedText decoded) {
        this.name = name;
        this.archive = archive;
        this.decoded = decoded;
        this.notices = Stream.of(archive.flatMap(MxlArchive::notice), decoded.contradiction())
                .flatMap(Optional::stream)
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
        // not the file's own word for its size: a device has none and never ends
        try (InputStream in = Files.newInputStream(path)) {
            return of(path.toString(), in.readNBytes(MAX_BYTES + 1));
        } catch (IOException e) {
            throw new ScoreException("the file cannot be read: " + IoReason.of(e), e);
        }
    }

    /**
     * A score from its bytes.
     *
     * @param name what the score is called in reports
     * @throws ScoreException if the bytes hold no text of a score
     */
    public static ScoreFile of(String name, byte[] bytes) throws ScoreException {
        if (bytes.length > MAX_BYTES) {
            throw tooLong();
        }
        Optional<MxlArchive> archive =
                MxlArchive.isZip(bytes) ? Optional.of(MxlArchive.of(bytes, MAX_BYTES)) : Optional.empty();
        DecodedText decoded = DecodedText.of(archive.map(MxlArchive::score).orElse(bytes));
        if (decoded.text().isBlank()) {
            throw new ScoreException("the file is empty; export the score again");
        }
        return new ScoreFile(name, archive, decoded);
    }

    private static ScoreException tooLong() {
        return new ScoreException("the file is longer than " + (MAX_BYTES >> 20) + " MB, which no score is");
    }

    /** What the score is called in reports. */
    public String name() {
        return name;
    }

    /** The score's text, without a byte order mark. */
    public String text() {
        return decoded.text();
    }

    /** Whether it is a compressed score (.mxl). */
    public boolean isCompressed() {
        return archive.isPresent();
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
