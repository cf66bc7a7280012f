package org.fretgloss.annotator.file;

/**
 * One change to a text: what stands from one offset to another gives way to something else.
 *
 * @param from offset of the first character that goes
 * @param to offset of the first character that stays; equal to {@code from} for an insertion
 * @param replacement what comes instead
 */
public record Splice(int from, int to, String replacement) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if the range ends before it begins
     */
    public Splice {
        if (from < 0 || to < from) {
            throw new IllegalArgumentException("no range: " + from + " to " + to);
        }
    }

    public static Splice insert(int offset, String insertion) {
        return new Splice(offset, offset, insertion);
    }

    public static Splice remove(int from, int to) {
        return new Splice(from, to, "");
    }
}
