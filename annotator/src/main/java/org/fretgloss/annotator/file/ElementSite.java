package org.fretgloss.annotator.file;

/**
 * Where an element stands in the text of a score. Offsets are in characters of the decoded text.
 *
 * @param start of the {@code <} of its start tag
 * @param startTagEnd just after the start tag
 * @param contentEnd just after its last child element; just after the start tag where it has none
 * @param endTagStart of the {@code <} of its end tag; just after the tag for an empty-element tag
 * @param end just after the element
 */
public record ElementSite(int start, int startTagEnd, int contentEnd, int endTagStart, int end) {

    /** Whether it is written as one tag, {@code <identification/>}. */
    public boolean isEmptyTag() {
        return startTagEnd == end;
    }

    public boolean hasChildren() {
        return contentEnd > startTagEnd;
    }
}
