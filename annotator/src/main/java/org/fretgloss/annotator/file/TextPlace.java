package org.fretgloss.annotator.file;

/**
 * A place in a text as editors count it.
 *
 * @param line from 1; lines end with LF, CR LF or CR
 * @param column from 1, in characters
 */
public record TextPlace(int line, int column) {

    /** The place of an offset. */
    public static TextPlace at(CharSequence text, int offset) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < offset; i++) {
            char c = text.charAt(i);
            boolean endsLine = c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
            if (endsLine) {
                line++;
                lineStart = i + 1;
            }
        }
        return new TextPlace(line, offset - lineStart + 1);
    }

    /** "line 12, column 7". */
    @Override
    public String toString() {
        return "line " + line + ", column " + column;
    }
}
