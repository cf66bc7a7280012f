package org.fretgloss.annotator.file;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the first bytes of an XML file say about its encoding (XML 1.0, appendix F). */
final class EncodingSigns {

    /** Those of four bytes first: the signs of two bytes are their beginnings. */
    private static final List<Charset> WIDE = List.of(
            Charset.forName("UTF-32LE"),
            Charset.forName("UTF-32BE"),
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE);

    /** More than any XML declaration needs. */
    private static final int DECLARATION_BYTES = 1024;

    private static final Pattern DECLARATION =
            Pattern.compile("^\\uFEFF?<\\?xml\\s[^>]*?\\bencoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]*)[\"']");

    private EncodingSigns() {}

    /** The encoding that a byte order mark or the byte pattern of a first {@code <} tells. */
    static Optional<Encoding> in(byte[] bytes) {
        for (Charset charset : WIDE) {
            if (startsWith(bytes, "\uFEFF".getBytes(charset))) {
                return Optional.of(new Encoding(charset, true));
            }
            if (startsWith(bytes, "<".getBytes(charset))) {
                return Optional.of(new Encoding(charset, false));
            }
        }
        return startsWith(bytes, "\uFEFF".getBytes(StandardCharsets.UTF_8))
                ? Optional.of(new Encoding(StandardCharsets.UTF_8, true))
                : Optional.empty();
    }

    /** The encoding's name in the XML declaration, read with an encoding that has the declaration's characters. */
    static Optional<String> declaredIn(byte[] bytes, Charset charset) {
        String start = new String(bytes, 0, Math.min(bytes.length, DECLARATION_BYTES), charset);
        Matcher declaration = DECLARATION.matcher(start);
        return declaration.find() ? Optional.of(declaration.group(1)) : Optional.empty();
    }

    /** The encoding of that name, where there is one that can be written too. */
    static Optional<Charset> charsetNamed(String name) {
        try {
            return Optional.of(Charset.forName(name)).filter(Charset::canEncode);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether a declared name can mean the encoding: "UTF-16" means either byte order. */
    static boolean agree(String declared, Charset charset) {
        return charsetNamed(declared)
                .filter(named -> named.equals(charset)
                        || charset.name().equals(named.name() + "LE")
                        || charset.name().equals(named.name() + "BE"))
                .isPresent();
    }

    /** Whether a character takes two or four bytes, so that not even ASCII reads alike. */
    static boolean isWide(Charset charset) {
        return charset.name().startsWith("UTF-16") || charset.name().startsWith("UTF-32");
    }

    /** Whether every character takes one byte. */
    static boolean isOneByte(Charset charset) {
        return charset.newEncoder().maxBytesPerChar() == 1;
    }

    private static boolean startsWith(byte[] bytes, byte[] sign) {
        return bytes.length >= sign.length && Arrays.equals(bytes, 0, sign.length, sign, 0, sign.length);
    }
}
