package org.fretgloss.annotator.write;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.sax.SAXSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.audiveris.proxymusic.ScorePartwise;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * The MusicXML 4.0 schema as the proxymusic jar carries it: simplified in metronome marks and lyrics' texts, otherwise
 * W3C's. The two schemas it imports are not in the jar; what it uses of them stands here.
 */
public final class MusicXmlSchema {

    private static final Map<String, String> IMPORTED = Map.of("xml.xsd", """
            <xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"
                targetNamespace="http://www.w3.org/XML/1998/namespace">
              <xs:attribute name="lang" type="xs:language"/>
              <xs:attribute name="space" type="xs:NCName"/>
            </xs:schema>
            """, "xlink.xsd", """
            <xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="http://www.w3.org/1999/xlink">
              <xs:attribute name="href" type="xs:anyURI"/>
              <xs:attribute name="type" type="xs:NMTOKEN"/>
              <xs:attribute name="role" type="xs:token"/>
              <xs:attribute name="title" type="xs:token"/>
              <xs:attribute name="show" type="xs:NMTOKEN"/>
              <xs:attribute name="actuate" type="xs:NMTOKEN"/>
            </xs:schema>
            """);

    private static final Schema SCHEMA = load();

    private MusicXmlSchema() {}

    /**
     * What is not valid about a score; nothing where all of it is. A document type declaration is passed over, and
     * nothing is fetched.
     */
    public static Optional<String> complaint(String score) {
        try {
            SAXParserFactory parsers = SAXParserFactory.newDefaultInstance();
            parsers.setNamespaceAware(true);
            parsers.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            XMLReader reader = parsers.newSAXParser().getXMLReader();
            SCHEMA.newValidator().validate(new SAXSource(reader, new InputSource(new StringReader(score))));
            return Optional.empty();
        } catch (SAXException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Schema load() {
        try {
            DOMImplementationLS dom = (DOMImplementationLS)
                    DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
            SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
            factory.setResourceResolver((type, namespace, publicId, systemId, base) -> {
                LSInput input = dom.createLSInput();
                input.setStringData(Objects.requireNonNull(IMPORTED.get(systemId), systemId));
                return input;
            });
            URL schema = ScorePartwise.class.getResource("/META-INF/jaxb/xsd/musicxml.xsd");
            return factory.newSchema(Objects.requireNonNull(schema, "the schema is in the proxymusic jar"));
        } catch (ReflectiveOperationException | SAXException e) {
            throw new IllegalStateException(e);
        }
    }
}
