package org.fretgloss.annotator.file;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * How the bytes of a score spell its text.
 *
 * @param charset the character encoding; UTF-16 and UTF-32 with their byte order
 * @param marked whether a byte order mark stands in front
 */
record Encoding(Charset charset, boolean marked) {

    private static final String MARK = "\uFEFF";

    /**
     * The bytes of a text.
     *
     * @throws IllegalArgumentException if the encoding cannot hold one of its characters
     */
    byte[] encode(String text) {
        if (!holdsEverything() && !charset.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException(charset + " cannot hold the whole text");
        }
        return (marked ? MARK + text : text).getBytes(charset);
    }

    private boolean holdsEverything() {
        return charset.contains(StandardCharsets.UTF_16);
    }

    /** The bytes of the byte order mark; empty where there is none. */
    byte[] mark() {
        return (marked ? MARK : "").getBytes(charset);
    }
}
