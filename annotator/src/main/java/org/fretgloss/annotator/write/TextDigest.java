package org.fretgloss.annotator.write;

import java.util.List;
import org.fretgloss.annotator.file.LyricSite;
import org.fretgloss.annotator.file.ShortDigest;

/**
 * A short digest of our texts in document order, by which texts edited by hand are noticed. Lyric numbers and places do
 * not count: a program that saves the score again may change them.
 */
final class TextDigest {

    private TextDigest() {}

    static String ofTexts(List<LineText> texts) {
        return ShortDigest.of(texts.stream().map(text -> text.line() + "\t" + text.text()));
    }

    static String ofLyrics(List<LyricSite> ours) {
        return ShortDigest.of(ours.stream().map(lyric -> lyric.ourLine().orElse("") + "\t" + lyric.text()));
    }
}
