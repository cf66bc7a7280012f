package org.fretgloss.annotator.config;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.WholeFile;

/** The corrections file that lies beside a score: {@code song.musicxml} has {@code song.corrections.toml}. */
public final class CorrectionsFile {

    private static final String ENDING = ".corrections.toml";
    private static final String HEAD = "# What was decided about the score beside this file.\n";

    private final Path path;

    private CorrectionsFile(Path path) {
        this.path = path;
    }

    /** The file beside a score, whether it is there or not. */
    public static CorrectionsFile beside(Path score) {
        String name = String.valueOf(score.getFileName());
        int dot = name.lastIndexOf('.');
        return new CorrectionsFile(score.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ENDING));
    }

    public Path path() {
        return path;
    }

    /**
     * What it says; nothing where there is no such file.
     *
     * @throws ScoreException if it cannot be read, or says what means nothing; the message names file and line
     */
    public Corrections read() throws ScoreException {
        return Files.exists(path) ? corrections(text()) : Corrections.NONE;
    }

    /**
     * Adds entries at its end, and makes it where it is not there. What stands in it stays, byte for byte; an entry that
     * it holds already is not written again.
     *
     * @return how many were added
     * @throws ScoreException if it cannot be read or written; it is written whole or not at all
     */
    public int accept(List<Accepted> entries) throws ScoreException {
        String text = Files.exists(path) ? text() : HEAD;
        Set<Accepted> fresh = new LinkedHashSet<>(entries);
        fresh.removeAll(new ArrayList<>(corrections(text).accepted()));
        if (fresh.isEmpty()) {
            return 0;
        }
        String gap = text.isEmpty() || text.endsWith("\n") ? "" : "\n";
        String added = fresh.stream().map(CorrectionsToml::write).collect(Collectors.joining());
        WholeFile.write(path, (text + gap + added).getBytes(StandardCharsets.UTF_8), true);
        return fresh.size();
    }

    private Corrections corrections(String text) throws ScoreException {
        try {
            return CorrectionsToml.read(text);
        } catch (ScoreException e) {
            throw new ScoreException(path.getFileName() + ": " + e.getMessage(), e);
        }
    }

    private String text() throws ScoreException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new ScoreException(path.getFileName() + ": this is not UTF-8 text", e);
        } catch (IOException e) {
            throw new ScoreException(path.getFileName() + ": it cannot be read: " + e.getMessage(), e);
        }
    }
}
