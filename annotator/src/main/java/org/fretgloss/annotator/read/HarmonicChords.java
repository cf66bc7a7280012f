package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.neck.StringFret;

/**
 * A harmonic may be written as a chord of the fretted, the touched and the heard pitch; it is one note. The chord's first
 * element stays and takes the others' pitch and place.
 */
final class HarmonicChords {

    private HarmonicChords() {}

    static List<NoteElement> joined(List<NoteElement> elements) {
        List<NoteElement> joined = new ArrayList<>();
        for (NoteElement element : elements) {
            int last = joined.size() - 1;
            if (element.chordMember() && last >= 0 && areOneHarmonic(joined.get(last), element)) {
                joined.set(last, join(joined.get(last), element));
            } else {
                joined.add(element);
            }
        }
        return joined;
    }

    private static boolean areOneHarmonic(NoteElement before, NoteElement element) {
        return tone(before).isPresent()
                && tone(element).isPresent()
                && (isPartial(before) || isPartial(element))
                && before.onset().equals(element.onset())
                && before.staff() == element.staff();
    }

    /** Whether it writes something else than where the note is fretted. */
    private static boolean isPartial(NoteElement element) {
        return tone(element)
                .filter(tone -> tone == HarmonicTone.TOUCHED || tone == HarmonicTone.HEARD)
                .isPresent();
    }

    private static NoteElement join(NoteElement first, NoteElement next) {
        NoteElement telling = rank(next) > rank(first) ? next : first;
        Optional<StringFret> place =
                isPartial(first) ? next.place().or(first::place) : first.place().or(next::place);
        return new NoteElement(
                first.ordinal(),
                first.bar(),
                first.onset(),
                first.duration(),
                first.staff(),
                first.voice(),
                first.chordMember(),
                first.grace(),
                first.hidden(),
                first.tieStart(),
                first.tieStop(),
                telling.pitch(),
                place,
                first.transposition(),
                telling.marks().togetherWith(first.marks()));
    }

    private static int rank(NoteElement element) {
        return tone(element).map(HarmonicTone::ordinal).orElse(-1);
    }

    private static Optional<HarmonicTone> tone(NoteElement element) {
        return element.marks().harmonic();
    }
}
