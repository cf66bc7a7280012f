package org.fretgloss.annotator.file;

import java.util.Arrays;
import java.util.OptionalInt;

/** The comment of a whole archive, which the library writes but does not read. */
final class ZipComment {

    /** Length of the record that closes an archive, without the comment that follows it (APPNOTE.TXT, 4.3.16). */
    private static final int END_RECORD = 22;

    private static final int MAX_COMMENT = 0xFFFF;

    private ZipComment() {}

    /** The comment's bytes; empty where there is none. */
    static byte[] of(byte[] archive) {
        OptionalInt end = endRecord(archive);
        return end.isPresent() ? Arrays.copyOfRange(archive, end.getAsInt() + END_RECORD, archive.length) : new byte[0];
    }

    /** Where the record begins that closes the archive. */
    static OptionalInt endRecord(byte[] archive) {
        int earliest = Math.max(0, archive.length - END_RECORD - MAX_COMMENT);
        for (int at = archive.length - END_RECORD; at >= earliest; at--) {
            if (isEndRecord(archive, at)) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    /** Whether the record stands here and its comment reaches just to the archive's end. */
    private static boolean isEndRecord(byte[] archive, int at) {
        return archive[at] == 'P'
                && archive[at + 1] == 'K'
                && archive[at + 2] == 5
                && archive[at + 3] == 6
                && ((archive[at + 20] & 0xFF) | (archive[at + 21] & 0xFF) << 8) == archive.length - at - END_RECORD;
    }
}
