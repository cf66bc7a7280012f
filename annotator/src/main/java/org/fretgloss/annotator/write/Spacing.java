package org.fretgloss.annotator.write;

import org.fretgloss.annotator.file.ElementSite;

/**
 * The white space that stands before an element where every element has a line of its own; nothing at all where the
 * file does not break lines there.
 *
 * @param lineEnd the file's line end, or empty
 * @param indent what stands before the element on its line
 */
record Spacing(String lineEnd, String indent) {

    static final Spacing NONE = new Spacing("", "");

    /** How the children of an element are spaced. */
    static Spacing inside(String text, ElementSite element) {
        int end = element.startTagEnd();
        while (end < text.length() && isBlank(text.charAt(end))) {
            end++;
        }
        return last(text, element.startTagEnd(), end);
    }

    /** How the element that begins at an offset is spaced. */
    static Spacing before(String text, int offset) {
        return last(text, startOfBlank(text, offset), offset);
    }

    /** Where the white space begins that ends at an offset. */
    static int startOfBlank(String text, int offset) {
        int start = offset;
        while (start > 0 && isBlank(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    /** The last line break of a stretch of white space, and what follows it: blank lines are not repeated. */
    private static Spacing last(String text, int from, int to) {
        int at = to - 1;
        while (at >= from && !isLineEnd(text.charAt(at))) {
            at--;
        }
        if (at < from) {
            return NONE;
        }
        boolean pair = text.charAt(at) == '\n' && at > from && text.charAt(at - 1) == '\r';
        return new Spacing(text.substring(pair ? at - 1 : at, at + 1), text.substring(at + 1, to));
    }

    /** The spacing of children of an element spaced like this. */
    Spacing deeper(String unit) {
        return lineEnd.isEmpty() ? NONE : new Spacing(lineEnd, indent + unit);
    }

    @Override
    public String toString() {
        return lineEnd + indent;
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || isLineEnd(c);
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }
}
