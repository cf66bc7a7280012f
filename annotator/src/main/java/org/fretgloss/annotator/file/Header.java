package org.fretgloss.annotator.file;

import java.util.List;
import java.util.Optional;

/**
 * The part of a score's head that says who made it, and where our own field stands or may go.
 *
 * @param identificationOffset where an identification may be inserted: just after the titles that the schema orders
 *     before it
 * @param identification the score's identification
 * @param miscellaneous its miscellaneous fields, the last child of the identification
 * @param fields fields of ours in it, one where all is well
 */
public record Header(
        int identificationOffset,
        Optional<ElementSite> identification,
        Optional<ElementSite> miscellaneous,
        List<Field> fields) {

    /** The name of our miscellaneous field. */
    public static final String OUR_NAME = "fretgloss";

    /**
     * A miscellaneous field of ours.
     *
     * @param start offset of its {@code <}
     * @param end offset just after it
     * @param text what stands in it
     */
    public record Field(int start, int end, String text) {}

    public Header {
        fields = List.copyOf(fields);
    }
}
