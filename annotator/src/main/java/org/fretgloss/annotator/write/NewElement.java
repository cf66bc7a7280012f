package org.fretgloss.annotator.write;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.text.StringEscapeUtils;

/**
 * An element to be inserted into a score; it holds either elements or text.
 *
 * @param name its local name
 * @param attributes as they stand in the start tag, each with a space before it
 * @param children elements in it
 * @param text text in it, not yet escaped
 */
record NewElement(String name, String attributes, List<NewElement> children, String text) {

    static NewElement of(String name, NewElement... children) {
        return new NewElement(name, "", List.of(children), "");
    }

    static NewElement ofText(String name, String text) {
        return new NewElement(name, "", List.of(), text);
    }

    /** The same with one attribute more; the value needs no escaping. */
    NewElement with(String attribute, String value) {
        return new NewElement(name, attributes + " " + attribute + "=\"" + value + "\"", children, text);
    }

    /**
     * The element's markup, led by the white space before it.
     *
     * @param prefix what element names begin with: empty, or a namespace prefix and its colon
     * @param spacing white space before the element
     * @param unit what a level of depth adds to the indentation
     */
    String markup(String prefix, Spacing spacing, String unit) {
        String inner = children.stream()
                .map(child -> child.markup(prefix, spacing.deeper(unit), unit))
                .collect(Collectors.joining("", "", children.isEmpty() ? "" : spacing.toString()));
        return spacing + "<" + prefix + name + attributes + ">" + escape(text) + inner + "</" + prefix + name + ">";
    }

    /** Quotation marks may stand in content; characters that XML forbids are dropped. */
    private static String escape(String text) {
        return StringEscapeUtils.escapeXml10(text).replace("&quot;", "\"").replace("&apos;", "'");
    }
}
