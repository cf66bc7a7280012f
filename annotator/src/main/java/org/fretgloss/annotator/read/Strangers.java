package org.fretgloss.annotator.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Listens, while a score is parsed, for elements, attributes and values that MusicXML does not have where they stand. Data
 * binding passes them over; the user is told, once for each kind.
 */
final class Strangers extends StreamReaderDelegate {

    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** Namespaces of attributes that may stand in any document. */
    private static final Set<String> EVERYBODYS =
            Set.of(XMLConstants.XML_NS_URI, XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI, XLINK);

    /** Longer than any value that the schema lists. */
    private static final int LONGEST_VALUE = 40;

    private record Open(String name, ElementModel model) {}

    private final Vocabulary vocabulary = new Vocabulary();
    private final StrangeKinds kinds = new StrangeKinds();
    private final Deque<Open> open = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private String bar = "";

    /** How many elements deep the reading is inside of a stranger; what stands in there is not told. */
    private int depthInside;

    Strangers(XMLStreamReader reader) {
        super(reader);
        open.push(new Open("", vocabulary.root()));
    }

    /** What is told about them. */
    Notices notices() {
        return kinds.notices();
    }

    /** Whether the element that was begun last holds a text. */
    boolean textStands() {
        return !text.toString().isBlank();
    }

    @Override
    public int next() throws XMLStreamException {
        int event = super.next();
        switch (event) {
            case START_ELEMENT -> begin(getLocalName());
            case END_ELEMENT -> end();
            case CHARACTERS, CDATA -> take(getText());
            default -> {
                // Comments and instructions are strangers to nobody.
            }
        }
        return event;
    }

    private void begin(String name) {
        text.setLength(0);
        if (name.equals("measure")) {
            String number = getAttributeValue(null, "number");
            bar = number == null ? "" : number.strip();
        }
        if (depthInside > 0) {
            depthInside++;
            return;
        }
        Optional<ElementModel> model =
                getNamespaceURI().isEmpty() ? vocabulary.child(open.element().model(), name) : Optional.empty();
        if (model.isEmpty()) {
            kinds.tell("the element <" + asWritten(getNamespaceURI(), getPrefix(), name) + ">", bar);
            depthInside++;
            return;
        }
        open.push(new Open(name, model.get()));
        for (int i = 0; i < getAttributeCount(); i++) {
            attribute(i, open.element());
        }
    }

    private void attribute(int index, Open element) {
        String namespace = Optional.ofNullable(getAttributeNamespace(index)).orElse("");
        if (EVERYBODYS.contains(namespace)) {
            return;
        }
        String name = getAttributeLocalName(index);
        Set<String> values = element.model().attributes().get(name);
        String of = " of <" + element.name() + ">";
        if (!namespace.isEmpty() || values == null) {
            kinds.tell("the attribute " + asWritten(namespace, getAttributePrefix(index), name) + of, bar);
        } else {
            value(getAttributeValue(index), values, " of the attribute " + name + of);
        }
    }

    private void end() {
        if (depthInside > 0) {
            depthInside--;
            return;
        }
        Open ended = open.pop();
        value(text.toString(), ended.model().values(), " of <" + ended.name() + ">");
    }

    /** White space around a value is nobody's; an empty one says nothing that could be passed over. */
    private void value(String written, Set<String> values, String where) {
        String value = written.strip();
        if (!values.isEmpty() && !value.isEmpty() && !values.contains(value)) {
            String shown = value.length() > LONGEST_VALUE ? value.substring(0, LONGEST_VALUE) + "…" : value;
            kinds.tell("the value '" + shown + "'" + where, bar);
        }
    }

    /** A text longer than any value needs not be known to its end. */
    private void take(String characters) {
        int room = 2 * LONGEST_VALUE - text.length();
        text.append(characters, 0, Math.max(0, Math.min(room, characters.length())));
    }

    private static String asWritten(String namespace, String prefix, String name) {
        return namespace.isEmpty() || prefix == null || prefix.isEmpty() ? name : prefix + ":" + name;
    }
}
