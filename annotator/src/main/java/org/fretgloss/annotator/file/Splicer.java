package org.fretgloss.annotator.file;

import java.util.Comparator;
import java.util.List;

/** Applies splices to a text. */
public final class Splicer {

    private Splicer() {}

    /**
     * The text with all splices made. Their offsets are those of the text as it is given; insertions at one offset keep
     * their order.
     *
     * @throws IllegalArgumentException if two splices overlap or one lies outside the text
     */
    public static String apply(String text, List<Splice> splices) {
        List<Splice> ordered =
                splices.stream().sorted(Comparator.comparingInt(Splice::from)).toList();
        StringBuilder spliced = new StringBuilder(text.length() + 16 * splices.size());
        int done = 0;
        for (Splice splice : ordered) {
            if (splice.from() < done || splice.to() > text.length()) {
                throw new IllegalArgumentException(
                        splice + " overlaps another that ends at " + done + ", or leaves the text's " + text.length());
            }
            spliced.append(text, done, splice.from()).append(splice.replacement());
            done = splice.to();
        }
        return spliced.append(text, done, text.length()).toString();
    }
}
