package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Hands on only those attributes that the reader understands, and numbers only if they are numbers: data binding gives up a
 * whole score for one position that says "auto". Answers by index, which is how data binding asks.
 */
final class KnownAttributes extends StreamReaderDelegate {

    private static final Set<String> TEXTS =
            Set.of("direction", "id", "implicit", "location", "measure", "print-object", "text", "type");

    private static final Map<String, Pattern> NUMBERS = Map.of(
            "line", Pattern.compile("\\d{1,4}"),
            "number", Pattern.compile("\\d{1,4}"),
            "tempo", Pattern.compile("\\d{1,9}(\\.\\d*)?|\\.\\d+"));

    /** Indices of the attributes that are handed on. */
    private final List<Integer> known = new ArrayList<>();

    KnownAttributes(XMLStreamReader reader) {
        super(reader);
    }

    @Override
    public int next() throws XMLStreamException {
        int event = super.next();
        known.clear();
        if (event == START_ELEMENT) {
            for (int i = 0; i < super.getAttributeCount(); i++) {
                if (isKnown(super.getAttributeLocalName(i), super.getAttributeValue(i))) {
                    known.add(i);
                }
            }
        }
        return event;
    }

    /** Only the number of a bar is a text. */
    private boolean isKnown(String name, String value) {
        if (name.equals("number") && getLocalName().equals("measure")) {
            return true;
        }
        Pattern number = NUMBERS.get(name);
        return number == null
                ? TEXTS.contains(name)
                : number.matcher(value.strip()).matches();
    }

    @Override
    public int getAttributeCount() {
        return known.size();
    }

    @Override
    public String getAttributeLocalName(int index) {
        return super.getAttributeLocalName(known.get(index));
    }

    @Override
    public String getAttributeNamespace(int index) {
        return super.getAttributeNamespace(known.get(index));
    }

    @Override
    public String getAttributePrefix(int index) {
        return super.getAttributePrefix(known.get(index));
    }

    @Override
    public String getAttributeType(int index) {
        return super.getAttributeType(known.get(index));
    }

    @Override
    public String getAttributeValue(int index) {
        return super.getAttributeValue(known.get(index));
    }
}
