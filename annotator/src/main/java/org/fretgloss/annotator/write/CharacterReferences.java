package org.fretgloss.annotator.write;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Locale;

/** Writes what an encoding cannot hold as a character reference; only texts and attribute values may hold such characters. */
final class CharacterReferences {

    private CharacterReferences() {}

    /** The markup with every character that the charset lacks as a reference. */
    static String beyond(Charset charset, String markup) {
        CharsetEncoder encoder = charset.newEncoder();
        if (encoder.canEncode(markup)) {
            return markup;
        }
        StringBuilder held = new StringBuilder(markup.length() + 64);
        markup.codePoints().forEach(c -> {
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
