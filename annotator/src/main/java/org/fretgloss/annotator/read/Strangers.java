package org.fretgloss.annotator.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Listens, while a score is parsed, for elements, attributes and values that MusicXML does not have where they stand, and
 * for numbers that the reader cannot use. Data binding passes them over; the user is told, once for each kind.
 */
final class Strangers extends StreamReaderDelegate {

    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** Namespaces of attributes that may stand in any document. */
    private static final Set<String> EVERYBODYS =
            Set.of(XMLConstants.XML_NS_URI, XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI, XLINK);

    /** Longer than any value that is understood. */
    private static final int LONGEST_TEXT = 80;

    /** An element, which of its numbers so far cannot be used, and which that it must hold it holds. */
    private record Open(String name, ElementModel model, Map<String, String> unread, Set<String> held) {

        Open(String name, ElementModel model) {
            this(name, model, new HashMap<>(), new HashSet<>());
        }
    }

    private final Vocabulary vocabulary = new Vocabulary();
    private final StrangeKinds kinds = new StrangeKinds();
    private final Deque<Open> open = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private final Whereabouts whereabouts = new Whereabouts();
    private Open ended;

    /** How many elements deep the reading is inside of a stranger; what stands in there is not told. */
    private int depthInside;

    Strangers(XMLStreamReader reader) {
        super(reader);
        ended = new Open("", vocabulary.root());
        open.push(ended);
    }

    /** What is told about them. */
    Notices notices() {
        return kinds.notices();
    }

    /** Whether the element that was begun last holds a text. */
    boolean textStands() {
        return !text.toString().isBlank();
    }

    /** The numbers of the element that ended last that cannot be used, by the names of the elements that hold them. */
    Map<String, String> unread() {
        return ended.unread();
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
        if (depthInside > 0) {
            depthInside++;
            return;
        }
        Optional<ElementModel> model =
                getNamespaceURI().isEmpty() ? vocabulary.child(open.element().model(), name) : Optional.empty();
        if (model.isEmpty()) {
            kinds.tell("the element <" + asWritten(getNamespaceURI(), getPrefix(), name) + ">", whereabouts.place());
            depthInside++;
            return;
        }
        text.setLength(0);
        open.push(new Open(name, model.get()));
        whereabouts.begin(name, this);
        if (name.equals("part") && !whereabouts.lists(whereabouts.part())) {
            kinds.tellPart(whereabouts.part());
        }
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
            kinds.tell(
                    "the attribute " + asWritten(namespace, getAttributePrefix(index), name) + of, whereabouts.place());
        } else {
            String written = getAttributeValue(index);
            value(written, values, " of the attribute " + name + of);
            KnownNumbers.ofAttribute(element.name(), name)
                    .ifPresent(use -> number(use, written, element, name, "the attribute " + name + of));
        }
    }

    private void end() {
        if (depthInside > 0) {
            depthInside--;
            return;
        }
        ended = open.pop();
        String name = ended.name();
        String written = text.toString();
        whereabouts.end(name, written);
        value(written, ended.model().values(), " of <" + name + ">");
        KnownNumbers.requiredIn(name)
                .filter(number -> !ended.held().contains(number))
                .ifPresent(number -> missing(number, ended));
        Open parent = open.element();
        KnownNumbers.requiredIn(parent.name()).filter(name::equals).ifPresent(parent.held()::add);
        KnownNumbers.ofElement(parent.name(), name)
                .ifPresent(use -> number(use, written, parent, name, "<" + name + ">"));
    }

    /** Data binding would read 0. */
    private void missing(String number, Open bearer) {
        KnownNumbers.ofElement(bearer.name(), number)
                .ifPresent(use -> kinds.tellMissing(number, bearer.name(), use, whereabouts.place()));
        bearer.unread().put(number, "");
    }

    private void number(NumberUse use, String written, Open bearer, String name, String where) {
        String number = written.strip();
        if (!use.shape().accepts(number)) {
            kinds.tellNumber(where, number, use, whereabouts.place());
            bearer.unread().put(name, number);
        }
    }

    /** White space around a value is nobody's; an empty one says nothing that could be passed over. */
    private void value(String written, Set<String> values, String where) {
        String value = written.strip();
        if (!values.isEmpty() && !value.isEmpty() && !values.contains(value)) {
            kinds.tell("the value " + Notices.quoted(value) + where, whereabouts.place());
        }
    }

    /** A text longer than any value needs not be known to its end. */
    private void take(String characters) {
        String further = text.isEmpty() ? characters.stripLeading() : characters;
        int room = LONGEST_TEXT - text.length();
        if (depthInside == 0) {
            text.append(further, 0, Math.max(0, Math.min(room, further.length())));
        }
    }

    private static String asWritten(String namespace, String prefix, String name) {
        return namespace.isEmpty() || prefix == null || prefix.isEmpty() ? name : prefix + ":" + name;
    }
}
