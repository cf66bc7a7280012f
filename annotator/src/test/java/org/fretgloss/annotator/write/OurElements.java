package org.fretgloss.annotator.write;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xmlunit.builder.DiffBuilder;

/** A score seen as XML, with or without our elements; white space between elements aside. */
final class OurElements {

    private OurElements() {}

    /** How two scores differ besides our elements. */
    static List<String> differencesBesides(String original, String annotated) {
        return differences(
                DiffBuilder.compare(parse(original)).withTest(parse(annotated)).withNodeFilter(node -> !isOurs(node)));
    }

    /** How two scores differ. */
    static List<String> differences(String original, String other) {
        return differences(DiffBuilder.compare(parse(original)).withTest(parse(other)));
    }

    private static List<String> differences(DiffBuilder diff) {
        return StreamSupport.stream(
                        diff.ignoreWhitespace().build().getDifferences().spliterator(), false)
                .map(Object::toString)
                .toList();
    }

    /** The score as another program would save it: parsed, indented afresh and written. */
    static String savedAgain(String score) {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.INDENT, "yes");
            StringWriter saved = new StringWriter();
            transformer.transform(new DOMSource(parse(score)), new StreamResult(saved));
            return saved.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Document parse(String score) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(score)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Our lyrics and our field, and elements around the field that hold nothing else, be they empty. */
    private static boolean isOurs(Node node) {
        if (!(node instanceof Element element)) {
            return false;
        }
        String local = element.getTagName().replaceFirst("^m:", "");
        return switch (local) {
            case "lyric" -> element.getAttribute("name").startsWith("fretgloss:");
            case "miscellaneous-field" -> element.getAttribute("name").equals("fretgloss");
            case "miscellaneous", "identification" -> holdsOnlyOurs(element);
            default -> false;
        };
    }

    private static boolean holdsOnlyOurs(Element element) {
        return IntStream.range(0, element.getChildNodes().getLength())
                .mapToObj(element.getChildNodes()::item)
                .filter(child -> child.getNodeType() != Node.TEXT_NODE)
                .allMatch(OurElements::isOurs);
    }
}
