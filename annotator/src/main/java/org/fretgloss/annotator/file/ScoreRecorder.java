package org.fretgloss.annotator.file;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.LocationInfo;
import org.codehaus.stax2.XMLStreamReader2;

/** Follows a parser through a score, event by event, and remembers where things stand. */
final class ScoreRecorder {

    private static final Set<String> ROOTS = Set.of("score-partwise", "score-timewise");

    /** A reference to anything but the five entities that XML itself knows. */
    private static final Pattern OWN_ENTITY = Pattern.compile("&(?!amp;|lt;|gt;|quot;|apos;|#)[^;]*;");

    private static final Pattern OUTSIDE_ENTITY = Pattern.compile("<!ENTITY\\s[^>]*?\\s(SYSTEM|PUBLIC)\\s");

    private final String text;
    private final ElementPath path = new ElementPath();
    private final NoteRecorder notes = new NoteRecorder();
    private final HeaderRecorder header = new HeaderRecorder();
    private String namespace = "";
    private String prefix = "";
    private ElementSite root = new ElementSite(0, 0, 0, 0, 0);

    ScoreRecorder(String text) {
        this.text = text;
    }

    /** Takes in the event that the parser stands on. */
    void event(XMLStreamReader2 reader) throws XMLStreamException {
        switch (reader.getEventType()) {
            case XMLStreamConstants.START_ELEMENT -> start(reader);
            case XMLStreamConstants.END_ELEMENT -> end(reader);
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                notes.text(path, reader);
                header.text(path, reader);
            }
            case XMLStreamConstants.ENTITY_REFERENCE -> throw ownEntity("&" + reader.getLocalName() + ";");
            case XMLStreamConstants.DTD -> doctype(startOf(reader), endOf(reader));
            default -> {
                // Comments, processing instructions and white space around the root say nothing about notes.
            }
        }
    }

    private void start(XMLStreamReader2 reader) throws XMLStreamException {
        int start = startOf(reader);
        int end = endOf(reader);
        if (path.isEmpty()) {
            begin(reader);
        }
        if (path.depth() == SafeXml.MAX_DEPTH) {
            throw new RefusedException(
                    "the score is nested more than " + SafeXml.MAX_DEPTH + " elements deep, which no score is",
                    "export it again");
        }
        Matcher entity = OWN_ENTITY.matcher(text).region(start, end);
        if (entity.find()) {
            throw ownEntity(entity.group());
        }
        String name = reader.getLocalName();
        path.push(new OpenElement(isOfScore(reader) ? name : "", keyOf(name, reader), start, end));
        notes.started(path, reader);
        header.started(path, reader, end);
    }

    private void begin(XMLStreamReader2 reader) throws RefusedException {
        String name = reader.getLocalName();
        if (!ROOTS.contains(name)) {
            throw new RefusedException(
                    "this is XML but no MusicXML score: it holds <" + name + "> where a score has <score-partwise>",
                    "export it as MusicXML");
        }
        namespace = reader.getNamespaceURI();
        prefix = reader.getPrefix().isEmpty() ? "" : reader.getPrefix() + ":";
    }

    private void end(XMLStreamReader2 reader) throws XMLStreamException {
        ElementSite site = path.last().closed(startOf(reader), endOf(reader));
        notes.ended(path, site);
        header.ended(path, site);
        OpenElement ended = path.pop();
        if (path.isEmpty()) {
            root = site;
        } else {
            path.last().childClosed(ended.name(), site.end());
        }
    }

    private void doctype(int start, int end) throws RefusedException {
        if (OUTSIDE_ENTITY.matcher(text).region(start, end).find()) {
            throw new RefusedException(
                    "the score declares an entity that lies in another file",
                    "export it again without its own entities");
        }
    }

    private static RefusedException ownEntity(String what) {
        return new RefusedException(
                "the score uses entities of its own (" + what + "), which are never expanded", "export it again");
    }

    /** Whether the element belongs to the score's own vocabulary, whatever its prefix. */
    boolean isOfScore(XMLStreamReader2 reader) {
        return reader.getNamespaceURI().equals(namespace);
    }

    private static String keyOf(String name, XMLStreamReader2 reader) {
        String attribute = name.equals("part") ? "id" : name.equals("measure") ? "number" : "";
        String value = attribute.isEmpty() ? "" : reader.getAttributeValue(null, attribute);
        return value == null ? "" : value;
    }

    private static int startOf(XMLStreamReader2 reader) {
        LocationInfo location = reader.getLocationInfo();
        return Math.toIntExact(location.getStartingCharOffset());
    }

    private static int endOf(XMLStreamReader2 reader) throws XMLStreamException {
        return Math.toIntExact(reader.getLocationInfo().getEndingCharOffset());
    }

    int ordinal() {
        return notes.ordinal();
    }

    String text() {
        return text;
    }

    ElementPath path() {
        return path;
    }

    ScoreScan scan() {
        return new ScoreScan(text, prefix, root, header.header(), notes.notes(), notes.lyrics());
    }
}
