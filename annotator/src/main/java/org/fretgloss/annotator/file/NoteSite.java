package org.fretgloss.annotator.file;

/**
 * Where a note element stands in the text of a score, and where a lyric may go into it.
 *
 * @param ordinal 1-based place among all note elements of the document
 * @param part the id of the part it stands in
 * @param site the whole element, in characters of the decoded text
 * @param lyricOffset offset at which a lyric element may be inserted: just after the last child that the schema orders
 *     before {@code play} and {@code listen}
 */
public record NoteSite(int ordinal, String part, ElementSite site, int lyricOffset) {

    /** Offset of its {@code <note}. */
    public int start() {
        return site.start();
    }
}
