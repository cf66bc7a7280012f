package org.fretgloss.annotator.file;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * A compressed score: a zip archive of which one entry is the score. A container says which; without one it is read all
 * the same where only one entry can be a score. When the score is replaced, all other bytes stay but for the sizes,
 * check sums and offsets that follow from it.
 */
final class MxlArchive {

    private static final int MAX_CONTAINER_BYTES = 1 << 20;

    /** Gives every byte of a name back as it was. */
    static final Charset TRANSPARENT = StandardCharsets.ISO_8859_1;

    private final byte[] bytes;
    private final int scoreIndex;
    private final byte[] score;
    private final List<String> notices;

    private MxlArchive(byte[] bytes, int scoreIndex, byte[] score, List<String> notices) {
        this.bytes = bytes;
        this.scoreIndex = scoreIndex;
        this.score = score;
        this.notices = List.copyOf(notices);
    }

    /** Whether the bytes begin as a zip archive does, be it empty. */
    static boolean isZip(byte[] bytes) {
        return bytes.length >= 4
                && bytes[0] == 'P'
                && bytes[1] == 'K'
                && ((bytes[2] == 3 && bytes[3] == 4) || (bytes[2] == 5 && bytes[3] == 6));
    }

    static MxlArchive of(byte[] bytes, int mostScoreBytes) throws ScoreException {
        try (ZipFile zip = open(bytes)) {
            List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
            ZipBounds.check(entries, bytes.length);
            OptionalInt container = EntryPaths.indexOf(ContainerXml.ENTRY, entries);
            int index = container.isPresent()
                    ? named(zip, entries, entries.get(container.getAsInt()))
                    : EntryPaths.onlyScore(entries)
                            .orElseThrow(() -> new ScoreException("this archive is no compressed score: it has no "
                                    + ContainerXml.ENTRY + "; export the score again"));
            EntryPaths.requireOneOf(EntryPaths.nameOf(entries.get(index)), entries);
            byte[] score = ZipBounds.read(zip, entries.get(index), mostScoreBytes);
            List<String> notices = new ArrayList<>();
            if (container.isEmpty()) {
                notices.add("the archive has no " + ContainerXml.ENTRY + "; its only score, '"
                        + EntryPaths.nameOf(entries.get(index)) + "', was read");
            }
            EntryPaths.firstOutside(entries)
                    .ifPresent(path -> notices.add("the archive holds a file whose name leads out of it, '" + path
                            + "'; it was not opened and stays in the copy, so look where the archive comes from"
                            + " before you pass it on"));
            return new MxlArchive(bytes, index, score, notices);
        } catch (IOException e) {
            throw new ScoreException("this compressed score is damaged or cut off; export or copy it again", e);
        }
    }

    /** The place of the entry that the container names. */
    private static int named(ZipFile zip, List<ZipArchiveEntry> entries, ZipArchiveEntry container)
            throws IOException, ScoreException {
        String path = ContainerXml.scorePath(ZipBounds.read(zip, container, MAX_CONTAINER_BYTES));
        EntryPaths.requireInside(path);
        return EntryPaths.indexOf(path, entries)
                .orElseThrow(() ->
                        new ScoreException("the score '" + path + "' is missing from the archive; export it again"));
    }

    /** The bytes of the score itself. */
    byte[] score() {
        return score.clone();
    }

    /** What the user should know: that no container says which entry the score is, or that a name is suspicious. */
    List<String> notices() {
        return notices;
    }

    /** The whole archive with another score in the score's place, packed in the same way. */
    byte[] withScore(byte[] replacement) {
        int crc = (int) ZipBounds.crcOf(replacement);
        return ZipRecords.of(bytes, scoreIndex)
                .flatMap(records ->
                        packed(replacement, records).map(packed -> records.with(packed, replacement.length, crc)))
                .orElseGet(() -> ArchiveRewrite.with(bytes, scoreIndex, replacement));
    }

    private Optional<byte[]> packed(byte[] replacement, ZipRecords records) {
        if (records.isStored()) {
            return Optional.of(replacement);
        }
        return records.isDeflated()
                ? Optional.of(Deflation.repack(score, records.packed(), replacement))
                : Optional.empty();
    }

    static ZipFile open(byte[] bytes) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .setCharset(TRANSPARENT)
                .setUseUnicodeExtraFields(false)
                .get();
    }
}
