package org.fretgloss.annotator.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Stream;

/** Sixteen hexadecimal digits that stand for a series of lines: no accident gives the same. */
public final class ShortDigest {

    private static final int BYTES = 8;

    private ShortDigest() {}

    /** The digest of lines in their order. */
    public static String of(Stream<String> lines) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            lines.forEachOrdered(line -> digest.update((line + "\n").getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
