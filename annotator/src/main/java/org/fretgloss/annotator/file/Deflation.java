package org.fretgloss.annotator.file;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.zip.Deflater;

/**
 * How hard an entry was deflated (RFC 1951), found by trying: nothing in an archive says it, but a changed score packed
 * in the same way and changed back gives the same bytes again.
 *
 * @param level of {@link Deflater}, 1 to 9
 */
record Deflation(int level) {

    /** The usual one first: it is also the answer where another kind of packer was at work. */
    private static final List<Deflation> CANDIDATES =
            List.of(6, 9, 1, 5, 8, 7, 4, 3, 2).stream().map(Deflation::new).toList();

    private static final int CHUNK_BYTES = 1 << 13;

    /** The way in which content was packed. */
    static Deflation of(byte[] content, byte[] packed) {
        return CANDIDATES.stream()
                .filter(candidate -> candidate.gives(packed, content))
                .findFirst()
                .orElse(CANDIDATES.get(0));
    }

    /** Content packed in this way. */
    byte[] pack(byte[] content) {
        Deflater deflater = deflaterOf(content);
        try {
            ByteArrayOutputStream packed = new ByteArrayOutputStream(content.length / 4 + 64);
            byte[] chunk = new byte[CHUNK_BYTES];
            while (!deflater.finished()) {
                packed.write(chunk, 0, deflater.deflate(chunk));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private boolean gives(byte[] packed, byte[] content) {
        Deflater deflater = deflaterOf(content);
        try {
            byte[] chunk = new byte[CHUNK_BYTES];
            int done = 0;
            while (!deflater.finished()) {
                int length = deflater.deflate(chunk);
                if (done + length > packed.length || !Arrays.equals(chunk, 0, length, packed, done, done + length)) {
                    return false;
                }
                done += length;
            }
            return done == packed.length;
        } finally {
            deflater.end();
        }
    }

    private Deflater deflaterOf(byte[] content) {
        boolean withoutZlibHeader = true;
        Deflater deflater = new Deflater(level, withoutZlibHeader);
        deflater.setInput(content);
        deflater.finish();
        return deflater;
    }
}
