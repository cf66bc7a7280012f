package org.fretgloss.annotator.file;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * What the bytes beyond ASCII say about an encoding in which ASCII is one byte a character.
 *
 * @param characters how many whole UTF-8 characters of several bytes they spell
 * @param strays bytes that belong to no such character
 * @param hasUpperControls whether any of them is 0x80 to 0x9F: letters and signs in windows-1252, controls in ISO-8859-1
 */
record ByteEvidence(int characters, int strays, boolean hasUpperControls) {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    static ByteEvidence in(byte[] bytes) {
        int characters = 0;
        int strays = 0;
        boolean upperControls = false;
        int at = 0;
        while (at < bytes.length) {
            int length = lengthAt(bytes, at);
            if (length > 1) {
                characters++;
            } else if (length == 0) {
                strays++;
                upperControls |= (bytes[at] & 0xE0) == 0x80;
            }
            at += Math.max(1, length);
        }
        return new ByteEvidence(characters, strays, upperControls);
    }

    /** Length of the UTF-8 character that begins there, by its first byte (RFC 3629, section 3); 0 for a stray byte. */
    private static int lengthAt(byte[] bytes, int at) {
        int first = bytes[at];
        if (first >= 0) {
            return 1;
        }
        int length = (first & 0xE0) == 0xC0 ? 2 : (first & 0xF0) == 0xE0 ? 3 : (first & 0xF8) == 0xF0 ? 4 : 0;
        for (int i = 1; i < length; i++) {
            if (at + i >= bytes.length || (bytes[at + i] & 0xC0) != 0x80) {
                return 0;
            }
        }
        return length;
    }

    /** Whether there is text beyond ASCII and all of it is UTF-8, which text in another encoding hardly ever is. */
    boolean speaksForUtf8() {
        return characters > 0 && strays == 0;
    }

    /** Whether no byte beyond ASCII makes sense in UTF-8; where some do, it is UTF-8 that was damaged. */
    boolean speaksAgainstUtf8() {
        return characters == 0 && strays > 0;
    }

    /** The usual encoding of one byte a character that has letters for these bytes. */
    Charset oneByteCharset() {
        return hasUpperControls ? WINDOWS_1252 : StandardCharsets.ISO_8859_1;
    }
}
