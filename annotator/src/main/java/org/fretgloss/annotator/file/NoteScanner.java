package org.fretgloss.annotator.file;

import java.io.StringReader;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads a score's text once and remembers where its notes stand, while data binding may pull the same events:
 *
 * <pre>{@code
 * NoteScanner scanner = NoteScanner.over(text);
 * unmarshaller.unmarshal(scanner.reader());   // scanner.ordinal() tells each note's ordinal on the way
 * ScoreScan scan = scanner.scan();
 * }</pre>
 *
 * <p>No DTD is read, no entity expanded and no other file opened; depth and sizes are bounded.
 */
public final class NoteScanner {

    private final ScoreRecorder recorder;
    private final RecordingReader reader;

    private NoteScanner(ScoreRecorder recorder, RecordingReader reader) {
        this.recorder = recorder;
        this.reader = reader;
    }

    /**
     * A scanner at the beginning of a score's text.
     *
     * @param text without a byte order mark
     * @throws ScoreException if the very beginning is no XML, or the score is too large for the memory
     */
    public static NoteScanner over(String text) throws ScoreException {
        if (!XmlStart.isIn(text)) {
            throw XmlStart.missing();
        }
        Memory.requireRoomToScan(text);
        ScoreRecorder recorder = new ScoreRecorder(text);
        try {
            XMLStreamReader2 parser =
                    (XMLStreamReader2) SafeXml.factory().createXMLStreamReader(new StringReader(text));
            return new NoteScanner(recorder, new RecordingReader(parser, recorder));
        } catch (XMLStreamException e) {
            throw XmlFailure.ofDeclaration(e);
        }
    }

    /** The events of the score. What it throws is put into words by {@link #explain}. */
    public XMLStreamReader reader() {
        return reader;
    }

    /** Ordinal of the note element whose start was read last; 0 before the first. */
    public int ordinal() {
        return recorder.ordinal();
    }

    /**
     * Reads what is left of the text, then tells where everything stands.
     *
     * @throws ScoreException if the text is no MusicXML score, or is damaged or built to do harm
     */
    public ScoreScan scan() throws ScoreException {
        try {
            while (reader.hasNext()) {
                reader.next();
            }
        } catch (XMLStreamException e) {
            throw explain(e);
        }
        return recorder.scan();
    }

    /** Puts a failure of reading into a musician's words, with the bar where it happened. */
    public ScoreException explain(Exception failure) {
        return new XmlFailure("the score", recorder.text(), recorder.path(), reader.line()).explain(failure);
    }
}
