package org.fretgloss.annotator.check;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** XML trees made by the platform's own parser, which the program never uses. */
public final class Xml {

    private Xml() {}

    /** The tree of a text; no document type is fetched. */
    public static Document parse(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("no well-formed XML: " + e.getMessage(), e);
        }
    }

    /** Whether a text is well-formed, by the platform's own parser. */
    public static boolean isWellFormed(String text) {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.newSAXParser().parse(new InputSource(new StringReader(text)), new DefaultHandler());
            return true;
        } catch (SAXException e) {
            return false;
        } catch (IOException | ParserConfigurationException e) {
            throw new AssertionError(e);
        }
    }

    /** The child elements, in order. */
    public static List<Element> children(Element parent) {
        return Stream.iterate(parent.getFirstChild(), Objects::nonNull, Node::getNextSibling)
                .filter(Element.class::isInstance)
                .map(Element.class::cast)
                .toList();
    }

    /** The child elements of that name, in order. */
    public static List<Element> children(Element parent, String name) {
        return children(parent).stream()
                .filter(child -> child.getTagName().equals(name))
                .toList();
    }
}
