package org.fretgloss.annotator.write;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.fretgloss.annotator.file.LyricSite;

/**
 * A short digest of our texts in document order, by which texts edited by hand are noticed. Lyric numbers and places do
 * not count: a program that saves the score again may change them.
 */
final class TextDigest {

    /** Sixteen hexadecimal digits: no accident gives the same. */
    private static final int BYTES = 8;

    private final MessageDigest digest;

    private TextDigest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static String ofTexts(List<LineText> texts) {
        TextDigest digest = new TextDigest();
        texts.forEach(text -> digest.add(text.line().toString(), text.text()));
        return digest.shortened();
    }

    static String ofLyrics(List<LyricSite> ours) {
        TextDigest digest = new TextDigest();
        ours.forEach(lyric -> digest.add(lyric.ourLine().orElse(""), lyric.text()));
        return digest.shortened();
    }

    private void add(String line, String text) {
        digest.update((line + "\t" + text + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private String shortened() {
        return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
    }
}
