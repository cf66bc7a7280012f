package org.fretgloss.annotator.check;

import java.util.List;
import org.fretgloss.time.Fraction;
import org.w3c.dom.Element;

/**
 * A note element where it stands in a score.
 *
 * @param ordinal 1-based place among all note elements of the document
 * @param element the element itself
 * @param part the id of its part
 * @param measure 0-based place of its measure in the part
 * @param moment quarter notes from the start of the measure
 * @param onTablature whether its staff has a tablature clef
 */
public record NoteElement(
        int ordinal, Element element, String part, int measure, Fraction moment, boolean onTablature) {

    /** Something that sounds anew: no rest, cue, grace note or continuation of a tie. */
    public boolean isStruck() {
        return !has("rest") && !has("cue") && !has("grace") && !continuesTie();
    }

    /** A further note of a chord. */
    public boolean isChordMember() {
        return has("chord");
    }

    private boolean continuesTie() {
        return Xml.children(element, "tie").stream()
                .anyMatch(tie -> tie.getAttribute("type").equals("stop"));
    }

    private boolean has(String child) {
        return !Xml.children(element, child).isEmpty();
    }

    public List<OurLyric> ourLyrics() {
        return Xml.children(element, "lyric").stream()
                .filter(OurLyric::isOurs)
                .map(lyric -> OurLyric.of(this, lyric))
                .toList();
    }
}
