package org.fretgloss.annotator.read;

import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * Listens, while a score is parsed, for elements that MusicXML does not have. Data binding passes them over; the user is
 * told, once for each name.
 */
final class Strangers extends StreamReaderDelegate {

    /** A file that is full of them is another program's, and no list helps. */
    private static final int MOST_NAMES = 8;

    private final Set<String> known = ElementNames.read();
    private final Set<String> seen = new HashSet<>();
    private final Notices notices = new Notices();
    private String bar = "";
    private boolean textStands;

    /** How many elements deep the reading is inside of a stranger; what stands in there is not told. */
    private int depthInside;

    Strangers(XMLStreamReader reader) {
        super(reader);
    }

    /** What is told about them so far. */
    Notices notices() {
        return notices;
    }

    /** Whether the element that was begun last holds a text. */
    boolean textStands() {
        return textStands;
    }

    @Override
    public int next() throws XMLStreamException {
        int event = super.next();
        switch (event) {
            case START_ELEMENT -> begin(getLocalName());
            case END_ELEMENT -> depthInside = Math.max(0, depthInside - 1);
            case CHARACTERS, CDATA -> textStands |= !isWhiteSpace();
            default -> {
                // Comments and instructions are strangers to nobody.
            }
        }
        return event;
    }

    private void begin(String name) {
        textStands = false;
        if (name.equals("measure")) {
            String number = getAttributeValue(null, "number");
            bar = number == null ? "" : number.strip();
        }
        if (depthInside > 0 || !known.contains(name)) {
            if (depthInside == 0) {
                tell(name);
            }
            depthInside++;
        }
    }

    private void tell(String name) {
        if (seen.size() == MOST_NAMES && !seen.contains(name)) {
            notices.say("further elements are not understood and are passed over", bar);
            return;
        }
        seen.add(name);
        notices.say("the element <" + name + "> is not understood here and is passed over", bar);
    }
}
