package org.fretgloss.annotator.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.fretgloss.time.Fraction;

/**
 * Which element bears the lyrics of a note. Other programs lose or overprint lyrics on grace notes, tie continuations and
 * the further notes of a chord, and draw none under tablature; so those never bear any. Of several at one moment the
 * earliest in the document does.
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
        Map<Fraction, Integer> bearers = elements.stream()
                .filter(hasNotation ? notation : shown)
                .filter(Carriers::mayBear)
                .collect(Collectors.toMap(NoteElement::onset, NoteElement::ordinal, Math::min));
        Map<Integer, Integer> carriers = new HashMap<>();
        for (Sounding note : notes) {
            Optional.ofNullable(bearers.get(note.stroke().onset()))
                    .ifPresent(bearer -> carriers.put(note.stroke().first().ordinal(), bearer));
        }
        return Map.copyOf(carriers);
    }

    private static boolean mayBear(NoteElement element) {
        return !element.grace() && !element.tieStop() && !element.chordMember();
    }
}
