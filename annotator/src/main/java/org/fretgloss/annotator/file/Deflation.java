package org.fretgloss.annotator.file;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.zip.Deflater;

/**
 * How hard an entry was deflated (RFC 1951), found by trying: nothing in an archive says it, but a changed score packed
 * in the same way and changed back gives the same bytes again.
 *
 * <p>Some contents come out alike at several levels. Where those would lead back to another level than the one they
 * were packed at, the output is cut into two blocks after as many bytes as the level's number, which any reader joins
 * again.
 *
 * @param level of {@link Deflater}, 1 to 9
 * @param isCut whether the blocks tell the level
 */
record Deflation(int level, boolean isCut) {

    /** The usual one first: it is also the answer where another kind of packer was at work. */
    private static final List<Integer> LEVELS = List.of(6, 9, 1, 5, 8, 7, 4, 3, 2);

    private static final int CHUNK_BYTES = 1 << 13;

    /**
     * Content packed as other content was.
     *
     * @param content what was packed
     * @param packed what it was packed into
     * @param other what to pack
     */
    static byte[] repack(byte[] content, byte[] packed, byte[] other) {
        Deflation way = new Deflation(levelOf(content, packed), false);
        byte[] repacked = way.pack(other);
        return levelOf(other, repacked) == way.level ? repacked : new Deflation(way.level, true).pack(other);
    }

    private static int levelOf(byte[] content, byte[] packed) {
        return LEVELS.stream()
                .filter(level -> new Deflation(level, false).gives(packed, content)
                        || new Deflation(level, true).gives(packed, content))
                .findFirst()
                .orElse(LEVELS.get(0));
    }

    private byte[] pack(byte[] content) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream(content.length / 4 + 64);
        deflate(content, (chunk, length) -> {
            packed.write(chunk, 0, length);
            return true;
        });
        return packed.toByteArray();
    }

    private boolean gives(byte[] packed, byte[] content) {
        int[] done = {0};
        boolean alike = deflate(content, (chunk, length) -> {
            int from = done[0];
            done[0] += length;
            return done[0] <= packed.length && Arrays.equals(chunk, 0, length, packed, from, done[0]);
        });
        return alike && done[0] == packed.length;
    }

    /** Takes what comes out, piece by piece, and says whether it wants more. */
    private interface Sink {
        boolean take(byte[] chunk, int length);
    }

    /** Whether the sink took all. */
    private boolean deflate(byte[] content, Sink sink) {
        boolean withoutZlibHeader = true;
        Deflater deflater = new Deflater(level, withoutZlibHeader);
        try {
            byte[] chunk = new byte[CHUNK_BYTES];
            int cut = isCut ? Math.min(level, content.length) : 0;
            if (isCut) {
                deflater.setInput(content, 0, cut);
                if (!sink.take(chunk, deflater.deflate(chunk, 0, chunk.length, Deflater.SYNC_FLUSH))) {
                    return false;
                }
            }
            deflater.setInput(content, cut, content.length - cut);
            deflater.finish();
            while (!deflater.finished()) {
                if (!sink.take(chunk, deflater.deflate(chunk))) {
                    return false;
                }
            }
            return true;
        } finally {
            deflater.end();
        }
    }
}
