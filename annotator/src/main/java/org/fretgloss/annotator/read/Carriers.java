package org.fretgloss.annotator.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.fretgloss.time.Fraction;

/**
 * Which element bears the lyrics of a note. Other programs lose or overprint lyrics on grace notes, tie continuations and
 * the further notes of a chord; so those never bear any. Some draw none under tablature; so a notation staff bears them
 * where one has a note at that moment. Of several at one moment the earliest in the document does.
 */
final class Carriers {

    private Carriers() {}

    /**
     * For each stroke that lyrics can be written for, from the ordinal of its first element to that of the bearer. A grace
     * note's bearer is its main note.
     */
    static Map<Integer, Integer> of(List<Sounding> notes, List<NoteElement> elements, Staves staves, Notices notices) {
        Predicate<NoteElement> shown = element -> !element.hidden() && !staves.isHidden(element.staff());
        Predicate<NoteElement> notation = shown.and(element -> !staves.isTablature(element.staff()));
        boolean hasNotation = elements.stream().anyMatch(notation);
        if (!hasNotation) {
            notices.say("there is only a tablature staff; some programs do not draw lyrics under tablature");
        }
        Map<Fraction, Integer> bearers = bearers(elements, hasNotation ? notation : shown);
        Map<Fraction, Integer> others = bearers(elements, shown);
        Map<Integer, Integer> carriers = new HashMap<>();
        for (Sounding note : notes) {
            Fraction moment = note.stroke().onset();
            Integer bearer = bearers.containsKey(moment) ? bearers.get(moment) : others.get(moment);
            if (bearer != null) {
                carriers.put(note.stroke().first().ordinal(), bearer);
            }
            if (bearer != null && !bearers.containsKey(moment)) {
                notices.say(
                        "some notes stand on the tablature staff alone; some programs do not draw lyrics under tablature");
            }
        }
        return Map.copyOf(carriers);
    }

    private static Map<Fraction, Integer> bearers(List<NoteElement> elements, Predicate<NoteElement> where) {
        return elements.stream()
                .filter(where)
                .filter(Carriers::mayBear)
                .collect(Collectors.toMap(NoteElement::onset, NoteElement::ordinal, Math::min));
    }

    private static boolean mayBear(NoteElement element) {
        return !element.grace() && !element.tieStop() && !element.chordMember();
    }
}
