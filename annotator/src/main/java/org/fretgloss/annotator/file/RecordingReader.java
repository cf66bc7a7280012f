package org.fretgloss.annotator.file;

import javax.xml.stream.XMLStreamException;
import javax.xml.stream.util.StreamReaderDelegate;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Hands a parser's events on and lets a recorder see each.
 *
 * <p>Elements of the score's namespace, if it has one, are handed on without it: MusicXML itself knows none.
 */
final class RecordingReader extends StreamReaderDelegate {

    private final XMLStreamReader2 parser;
    private final ScoreRecorder recorder;

    RecordingReader(XMLStreamReader2 parser, ScoreRecorder recorder) {
        super(parser);
        this.parser = parser;
        this.recorder = recorder;
    }

    @Override
    public int next() throws XMLStreamException {
        int event = parser.next();
        recorder.event(parser);
        return event;
    }

    @Override
    public int nextTag() throws XMLStreamException {
        int event = next();
        while (event != START_ELEMENT && event != END_ELEMENT) {
            event = next();
        }
        return event;
    }

    /** How far reading has come: the line of the text, from 1. */
    int line() {
        return parser.getLocationInfo().getCurrentLocation().getLineNumber();
    }

    /** Never called by data binding; refused because the recorder must see every event. */
    @Override
    public String getElementText() {
        throw new UnsupportedOperationException("read the text event by event");
    }

    /** Interned: data binding compares names by identity. */
    @Override
    public String getLocalName() {
        return parser.getLocalName().intern();
    }

    @Override
    public String getNamespaceURI() {
        return recorder.isOfScore(parser) ? "" : parser.getNamespaceURI().intern();
    }
}
