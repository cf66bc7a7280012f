package org.fretgloss.annotator.file;

import com.ctc.wstx.api.WstxInputProperties;
import com.ctc.wstx.stax.WstxInputFactory;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLResolver;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLInputFactory2;

/**
 * The one XML parser of this program, set so that no file can make it fetch anything or exhaust the memory.
 *
 * <p>It is named, never looked up: another parser on the class path gives offsets that are wrong.
 */
final class SafeXml {

    /** A score nests about fifteen deep. */
    static final int MAX_DEPTH = 200;

    static final int MAX_ATTRIBUTES = 500;
    static final int MAX_ATTRIBUTE_CHARACTERS = 1 << 20;
    static final int MAX_TEXT_CHARACTERS = 1 << 25;

    private SafeXml() {}

    static XMLInputFactory factory() {
        WstxInputFactory factory = new WstxInputFactory();
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        // Lazily, damage would be told by unchecked exceptions wherever a text is looked at.
        factory.setProperty(XMLInputFactory2.P_LAZY_PARSING, false);
        XMLResolver refusal = SafeXml::refuse;
        factory.setXMLResolver(refusal);
        factory.setProperty(WstxInputProperties.P_DTD_RESOLVER, refusal);
        factory.setProperty(WstxInputProperties.P_ENTITY_RESOLVER, refusal);
        factory.setProperty(WstxInputProperties.P_MAX_ELEMENT_DEPTH, MAX_DEPTH + 1);
        factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTES_PER_ELEMENT, MAX_ATTRIBUTES);
        factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTE_SIZE, MAX_ATTRIBUTE_CHARACTERS);
        factory.setProperty(WstxInputProperties.P_MAX_TEXT_LENGTH, MAX_TEXT_CHARACTERS);
        factory.setProperty(WstxInputProperties.P_MAX_ENTITY_COUNT, 1);
        factory.setProperty(WstxInputProperties.P_MAX_ENTITY_DEPTH, 1);
        return factory;
    }

    private static Object refuse(String publicId, String systemId, String baseUri, String namespace)
            throws XMLStreamException {
        throw new RefusedException("the score asks for another file", "export it again");
    }
}
