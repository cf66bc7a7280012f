package org.fretgloss.annotator.write;

import java.nio.charset.Charset;
import org.fretgloss.annotator.file.ScoreScan;

/**
 * How a file lays its elements out.
 *
 * @param prefix what element names begin with: empty, or a namespace prefix and its colon
 * @param unit what a level of depth adds to the indentation
 * @param charset the characters that may be written as they are; all others become character references
 */
record Layout(String prefix, String unit, Charset charset) {

    static Layout of(ScoreScan scan, Charset charset) {
        String root = Spacing.before(scan.text(), scan.root().start()).indent();
        String child = Spacing.inside(scan.text(), scan.root()).indent();
        String unit = child.startsWith(root) ? child.substring(root.length()) : child;
        return new Layout(scan.prefix(), unit, charset);
    }

    Spacing deeper(Spacing spacing) {
        return spacing.deeper(unit);
    }

    /** An element's markup, led by the white space before it. */
    String markup(NewElement element, Spacing spacing) {
        return CharacterReferences.beyond(charset, element.markup(prefix, spacing, unit));
    }
}
