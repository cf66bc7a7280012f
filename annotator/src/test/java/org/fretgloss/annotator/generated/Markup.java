package org.fretgloss.annotator.generated;

/**
 * Writes elements in one of the layouts that programs have: line ends, indentation or one line, a namespace prefix,
 * blanks in tags, comments and processing instructions between elements, texts plain, in CDATA or by references.
 */
final class Markup {

    private final Dice dice;
    private final String lineEnd;
    private final String unit;
    private final String prefix;
    private final boolean cluttered;
    private final StringBuilder out = new StringBuilder();
    private int depth;

    Markup(Dice dice) {
        this.dice = dice;
        this.lineEnd = dice.oneOf("\n", "\r\n", "\r", "");
        this.unit = lineEnd.isEmpty() ? "" : dice.oneOf("", " ", "  ", "    ", "\t");
        this.prefix = dice.has(Feature.NAMESPACE_PREFIX) ? "m:" : "";
        this.cluttered = dice.oneIn(3);
    }

    /** The XML declaration, perhaps a document type, and the root element with everything in it. */
    String document(String root, Runnable content) {
        out.append("<?xml version=\"1.0\"?>").append(lineEnd);
        if (dice.oneIn(3)) {
            out.append("<!DOCTYPE ").append(prefix).append(root);
            out.append(dice.oneOf("", " [<!-- <note> -->]", " [<!ENTITY unused \"]>\">" + lineEnd + "]"));
            out.append('>').append(lineEnd);
        }
        String namespace = prefix.isEmpty() ? "" : " xmlns:m=\"urn:example\"";
        tag(root, namespace + version());
        depth++;
        content.run();
        depth--;
        newLine();
        out.append("</").append(prefix).append(root).append('>');
        return out.append(dice.oneOf("", lineEnd, "<!-- end -->")).toString();
    }

    private String version() {
        return dice.has(Feature.OTHER_VERSION)
                ? dice.oneOf(
                        "",
                        " version=\"1.0\"",
                        " version=\"2.0\"",
                        " version=\"3.1\"",
                        " version=\"4.1\"",
                        " version=\"9\"")
                : " version=\"4.0\"";
    }

    /** An element with elements in it. */
    void element(String name, String attributes, Runnable content) {
        newLine();
        tag(name, attributes);
        depth++;
        content.run();
        clutter();
        depth--;
        newLine();
        out.append("</").append(prefix).append(name).append('>');
    }

    void element(String name, Runnable content) {
        element(name, "", content);
    }

    /** An element with text in it. */
    void leaf(String name, String attributes, String text) {
        clutter();
        newLine();
        out.append('<').append(prefix).append(name).append(attributes).append('>');
        out.append(spelled(text));
        out.append("</")
                .append(prefix)
                .append(name)
                .append(dice.oneOf("", "", " "))
                .append('>');
    }

    void leaf(String name, String text) {
        leaf(name, "", text);
    }

    void leaf(String name, int number) {
        leaf(name, "", String.valueOf(number));
    }

    void empty(String name, String attributes) {
        newLine();
        out.append('<').append(prefix).append(name).append(attributes);
        out.append(dice.oneOf("", " ")).append("/>");
    }

    void empty(String name) {
        empty(name, "");
    }

    private void tag(String name, String attributes) {
        out.append('<').append(prefix).append(name).append(attributes);
        if (dice.has(Feature.STRANGE_ATTRIBUTE, 20)) {
            out.append(" glow='<x> of 5'".replace("<", "&lt;"));
        }
        out.append(dice.oneOf("", "", " ")).append('>');
    }

    private String spelled(String text) {
        return switch (text.isEmpty() ? 9 : dice.below(24)) {
            case 0 -> "<![CDATA[" + text + "]]>";
            case 1 -> "&#" + text.codePointAt(0) + ";" + escaped(text.substring(text.offsetByCodePoints(0, 1)));
            default -> escaped(text);
        };
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private void clutter() {
        if (cluttered && dice.oneIn(10)) {
            newLine();
            out.append(dice.oneOf("<!-- <note>\uD834\uDD1E -->", "<?keep <lyric/> ?>", "<!---->"));
        }
        if (dice.has(Feature.STRANGE_ELEMENT, 30)) {
            newLine();
            out.append("<")
                    .append(prefix)
                    .append("glow depth='3'><x>note</x></")
                    .append(prefix)
                    .append("glow>");
        }
    }

    private void newLine() {
        out.append(lineEnd).append(unit.repeat(depth));
    }
}
