package org.fretgloss.annotator.file;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Locale;

/**
 * How the bytes of a score spell its text.
 *
 * @param charset the character encoding; UTF-16 and UTF-32 with their byte order
 * @param marked whether a byte order mark stands in front
 */
record Encoding(Charset charset, boolean marked) {

    private static final String MARK = "\uFEFF";

    /** The bytes of a text. A character that the encoding cannot hold becomes a character reference. */
    byte[] encode(String text) {
        CharsetEncoder encoder = charset.newEncoder();
        String held = encoder.canEncode(text) ? text : withReferences(text, encoder);
        return (marked ? MARK + held : held).getBytes(charset);
    }

    /** The bytes of the byte order mark; empty where there is none. */
    byte[] mark() {
        return (marked ? MARK : "").getBytes(charset);
    }

    private static String withReferences(String text, CharsetEncoder encoder) {
        StringBuilder held = new StringBuilder(text.length() + 64);
        text.codePoints().forEach(c -> {
            String character = Character.toString(c);
            if (encoder.canEncode(character)) {
                held.append(character);
            } else {
                held.append(String.format(Locale.ROOT, "&#x%X;", c));
            }
        });
        return held.toString();
    }
}
