package org.fretgloss.annotator.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.archivers.zip.ZipMethod;

/**
 * What an archive may hold before it counts as one made to do harm. What its entries are called is no matter: none is
 * ever written to a disk, and those that are not the score are neither unpacked nor changed.
 */
final class ZipBounds {

    /** Far above a score with its pictures and sounds. */
    static final int MAX_ENTRIES = 2_000;

    /** Scores shrink to a thirtieth of their size; what shrinks to less than this share is no score. */
    static final int MAX_RATIO = 200;

    /** Up to this size the ratio says nothing: a score of rests is all repetition. */
    static final int RATIO_COUNTS_FROM_BYTES = 1 << 22;

    private ZipBounds() {}

    /** Refuses archives with too many entries, and with entries that share bytes. */
    static void check(List<ZipArchiveEntry> entries, long archiveBytes) throws ScoreException {
        if (entries.size() > MAX_ENTRIES) {
            throw new ScoreException("the archive holds " + entries.size() + " entries, more than the " + MAX_ENTRIES
                    + " of any score; export the score again");
        }
        long packed = 0;
        for (ZipArchiveEntry entry : entries) {
            packed += entry.getCompressedSize();
        }
        if (packed > archiveBytes) {
            throw new ScoreException(
                    "the archive's entries overlap, as in one made to do harm; export the score again");
        }
    }

    /**
     * The unpacked bytes of an entry.
     *
     * @param mostBytes the longest content that is read
     */
    static byte[] read(ZipFile zip, ZipArchiveEntry entry, int mostBytes) throws IOException, ScoreException {
        if (!zip.canReadEntryData(entry) || !isOfUsualMethod(entry)) {
            throw new ScoreException(
                    "'" + entry.getName() + "' is encrypted or packed in an unusual way; export the score again");
        }
        long byRatio = Math.max(RATIO_COUNTS_FROM_BYTES, entry.getCompressedSize() * MAX_RATIO);
        int limit = (int) Math.min(mostBytes, byRatio);
        byte[] content;
        try (InputStream in = zip.getInputStream(entry)) {
            content = in.readNBytes(limit + 1);
        }
        if (content.length > limit) {
            throw new ScoreException("'" + entry.getName() + "' unpacks to more than " + (limit >> 20)
                    + " MB, as in an archive made to do harm; export the score again");
        }
        if (crcOf(content) != entry.getCrc()) {
            throw new ScoreException("'" + entry.getName() + "' is damaged; export or copy the score again");
        }
        return content;
    }

    static long crcOf(byte[] content) {
        CRC32 crc = new CRC32();
        crc.update(content);
        return crc.getValue();
    }

    /** What the standard's compressed files use, and all that can be put back as it was (W3C, MusicXML 4.0, .mxl). */
    private static boolean isOfUsualMethod(ZipArchiveEntry entry) {
        return entry.getMethod() == ZipMethod.STORED.getCode() || entry.getMethod() == ZipMethod.DEFLATED.getCode();
    }
}
