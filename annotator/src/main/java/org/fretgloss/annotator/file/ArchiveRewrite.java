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
 * Writes an archive afresh with another content in one entry; all others keep their packed bytes. For archives that
 * {@link ZipRecords} does not know its way in: their headers may come out differently.
 */
final class ArchiveRewrite {

    private ArchiveRewrite() {}

    static byte[] with(byte[] archive, int index, byte[] content) {
        SeekableInMemoryByteChannel channel = new SeekableInMemoryByteChannel();
        try (ZipFile zip = MxlArchive.open(archive);
                ZipArchiveOutputStream out = new ZipArchiveOutputStream(channel)) {
            List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
            copyHabits(archive, entries, out);
            for (int i = 0; i < entries.size(); i++) {
                if (i == index) {
                    write(content, entries.get(i), out);
                } else {
                    copyRaw(zip, entries.get(i), out);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Arrays.copyOf(channel.array(), Math.toIntExact(channel.size()));
    }

    /** Names are written in UTF-8 only where the archive says it does so itself; otherwise byte by byte. */
    private static void copyHabits(byte[] archive, List<ZipArchiveEntry> entries, ZipArchiveOutputStream out) {
        boolean unicode =
                entries.stream().anyMatch(entry -> entry.getGeneralPurposeBit().usesUTF8ForNames());
        Charset names = unicode ? StandardCharsets.UTF_8 : MxlArchive.TRANSPARENT;
        out.setEncoding(names.name());
        out.setUseLanguageEncodingFlag(unicode);
        out.setComment(new String(ZipComment.of(archive), names));
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
