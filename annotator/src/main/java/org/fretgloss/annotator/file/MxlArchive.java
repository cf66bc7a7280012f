package org.fretgloss.annotator.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * A compressed score: a zip archive of which one entry is the score. When the score is replaced, all other entries keep
 * their packed bytes.
 */
final class MxlArchive {

    private static final int MAX_CONTAINER_BYTES = 1 << 20;

    /** Gives every byte of a name back as it was. */
    private static final Charset TRANSPARENT = StandardCharsets.ISO_8859_1;

    private final byte[] bytes;
    private final int scoreIndex;
    private final byte[] score;

    private MxlArchive(byte[] bytes, int scoreIndex, byte[] score) {
        this.bytes = bytes;
        this.scoreIndex = scoreIndex;
        this.score = score;
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
            int container = EntryPaths.indexOf(ContainerXml.ENTRY, entries)
                    .orElseThrow(() -> new ScoreException("this archive is no compressed score: it has no "
                            + ContainerXml.ENTRY + "; export the score again"));
            String path = ContainerXml.scorePath(ZipBounds.read(zip, entries.get(container), MAX_CONTAINER_BYTES));
            EntryPaths.requireInside(path);
            int index = EntryPaths.indexOf(path, entries)
                    .orElseThrow(() -> new ScoreException(
                            "the score '" + path + "' is missing from the archive; export it again"));
            return new MxlArchive(bytes, index, ZipBounds.read(zip, entries.get(index), mostScoreBytes));
        } catch (IOException e) {
            throw new ScoreException("this compressed score is damaged or cut off; export or copy it again", e);
        }
    }

    /** The bytes of the score itself. */
    byte[] score() {
        return score.clone();
    }

    /** The whole archive with another score in the score's place, packed by the same method. */
    byte[] withScore(byte[] replacement) {
        SeekableInMemoryByteChannel channel = new SeekableInMemoryByteChannel();
        try (ZipFile zip = open(bytes);
                ZipArchiveOutputStream out = new ZipArchiveOutputStream(channel)) {
            List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
            copyHabits(entries, out);
            for (int i = 0; i < entries.size(); i++) {
                if (i == scoreIndex) {
                    write(replacement, entries.get(i), out);
                } else {
                    copyRaw(zip, entries.get(i), out);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Arrays.copyOf(channel.array(), Math.toIntExact(channel.size()));
    }

    private static ZipFile open(byte[] bytes) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                .setCharset(TRANSPARENT)
                .setUseUnicodeExtraFields(false)
                .get();
    }

    /** Names are written in UTF-8 only where the archive says it does so itself; otherwise byte by byte. */
    private void copyHabits(List<ZipArchiveEntry> entries, ZipArchiveOutputStream out) {
        boolean unicode =
                entries.stream().anyMatch(entry -> entry.getGeneralPurposeBit().usesUTF8ForNames());
        Charset names = unicode ? StandardCharsets.UTF_8 : TRANSPARENT;
        out.setEncoding(names.name());
        out.setUseLanguageEncodingFlag(unicode);
        out.setComment(new String(ZipComment.of(bytes), names));
    }

    private static void copyRaw(ZipFile zip, ZipArchiveEntry entry, ZipArchiveOutputStream out) throws IOException {
        try (InputStream packed = zip.getRawInputStream(entry)) {
            out.addRawArchiveEntry(entry, packed);
        }
    }

    private static void write(byte[] content, ZipArchiveEntry entry, ZipArchiveOutputStream out) throws IOException {
        ZipArchiveEntry replaced = new ZipArchiveEntry(entry);
        replaced.setSize(content.length);
        replaced.setCompressedSize(-1);
        replaced.setCrc(ZipBounds.crcOf(content));
        out.putArchiveEntry(replaced);
        out.write(content);
        out.closeArchiveEntry();
    }
}
