package org.fretgloss.annotator.generated;

import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Writes elements in one of the layouts that programs have: line ends, indentation or one line, a namespace prefix,
 * blanks in tags, comments and processing instructions between elements, texts plain, in CDATA or by references.
 */
final class Markup {

    private final RandomGenerator random;
    private final String lineEnd;
    private final String unit;
    private final String prefix;
    private final boolean cluttered;
    private final StringBuilder out = new StringBuilder();
    private int depth;

    Markup(RandomGenerator random) {
        this.random = random;
        this.lineEnd = oneOf("\n", "\r\n", "\r", "");
        this.unit = lineEnd.isEmpty() ? "" : oneOf("", " ", "  ", "    ", "\t");
        this.prefix = random.nextInt(8) == 0 ? "m:" : "";
        this.cluttered = random.nextInt(3) == 0;
    }

    boolean isPrefixed() {
        return !prefix.isEmpty();
    }

    /** The XML declaration, perhaps a document type, and the root element with everything in it. */
    String document(String root, Runnable content) {
        out.append("<?xml version=\"1.0\"?>").append(lineEnd);
        if (random.nextInt(3) == 0) {
            out.append("<!DOCTYPE ").append(prefix).append(root);
            out.append(oneOf("", " [<!-- <note> -->]", " [<!ENTITY unused \"]>\">" + lineEnd + "]"));
            out.append('>').append(lineEnd);
        }
        String namespace = prefix.isEmpty() ? "" : " xmlns:m=\"urn:example\"";
        tag(root, namespace + " version=\"4.0\"");
        depth++;
        content.run();
        depth--;
        newLine();
        out.append("</").append(prefix).append(root).append('>');
        return out.append(oneOf("", lineEnd, "<!-- end -->")).toString();
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
        out.append("</").append(prefix).append(name).append(oneOf("", "", " ")).append('>');
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
        out.append(oneOf("", " ")).append("/>");
    }

    void empty(String name) {
        empty(name, "");
    }

    private void tag(String name, String attributes) {
        out.append('<').append(prefix).append(name).append(attributes);
        out.append(oneOf("", "", " ")).append('>');
    }

    private String spelled(String text) {
        return switch (text.isEmpty() ? 9 : random.nextInt(24)) {
            case 0 -> "<![CDATA[" + text + "]]>";
            case 1 -> "&#" + text.codePointAt(0) + ";" + escaped(text.substring(text.offsetByCodePoints(0, 1)));
            default -> escaped(text);
        };
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private void clutter() {
        if (cluttered && random.nextInt(10) == 0) {
            newLine();
            out.append(oneOf("<!-- <note>\uD834\uDD1E -->", "<?keep <lyric/> ?>", "<!---->"));
        }
    }

    private void newLine() {
        out.append(lineEnd).append(unit.repeat(depth));
    }

    private String oneOf(String... choices) {
        return List.of(choices).get(random.nextInt(choices.length));
    }
}
