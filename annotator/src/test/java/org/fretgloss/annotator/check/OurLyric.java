package org.fretgloss.annotator.check;

import static java.util.stream.Collectors.joining;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A lyric of ours.
 *
 * @param note the note that bears it
 * @param line the line it names
 * @param number its lyric number as written
 * @param text its words
 */
public record OurLyric(NoteElement note, String line, String number, String text) {

    private static final String OURS = "fretgloss:";

    static boolean isOurs(Element lyric) {
        return lyric.getAttribute("name").startsWith(OURS);
    }

    static OurLyric of(NoteElement note, Element lyric) {
        return new OurLyric(
                note,
                lyric.getAttribute("name").substring(OURS.length()),
                lyric.getAttribute("number"),
                Xml.children(lyric, "text").stream().map(Node::getTextContent).collect(joining("|")));
    }

    /** Where it stands in time: no two of one line may stand there. */
    public String moment() {
        return "line " + line + ", measure " + note.measure() + ", " + note.moment() + " quarters in";
    }
}
