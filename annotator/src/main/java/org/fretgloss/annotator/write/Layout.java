package org.fretgloss.annotator.write;

import org.fretgloss.annotator.file.ScoreScan;

/**
 * How a file lays its elements out.
 *
 * @param prefix what element names begin with: empty, or a namespace prefix and its colon
 * @param unit what a level of depth adds to the indentation
 */
record Layout(String prefix, String unit) {

    static Layout of(ScoreScan scan) {
        String root = Spacing.before(scan.text(), scan.root().start()).indent();
        String child = Spacing.inside(scan.text(), scan.root()).indent();
        return new Layout(scan.prefix(), child.startsWith(root) ? child.substring(root.length()) : child);
    }

    Spacing deeper(Spacing spacing) {
        return spacing.deeper(unit);
    }

    /** An element's markup, led by the white space before it. */
    String markup(NewElement element, Spacing spacing) {
        return element.markup(prefix, spacing, unit);
    }
}
