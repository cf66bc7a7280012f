package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.Optional;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.WrittenSigns;
import org.fretgloss.time.Fraction;

/** The signs of a note that proof-reading looks at, as they stand in the score. */
final class SignReader {

    private SignReader() {}

    static WrittenSigns of(Sounding note) {
        Stroke stroke = note.stroke();
        Marks marks = stroke.marks();
        return new WrittenSigns(
                note.at().isPresent() ? Optional.empty() : stroke.place(),
                tiedTo(stroke),
                stroke.first().tieStop() && !stroke.grace(),
                marks.beginsLegato(),
                marks.endsLegato(),
                hasLooseRelease(stroke),
                unreadBend(note),
                bendLabel(note));
    }

    /** Where the tie's end is fretted, if not where it began. */
    private static Optional<StringFret> tiedTo(Stroke stroke) {
        Optional<StringFret> begun = stroke.first().place();
        return stroke.elements().stream()
                .skip(1)
                .filter(NoteElement::tieStop)
                .flatMap(element -> element.place().stream())
                .filter(place -> begun.isPresent() && !begun.get().equals(place))
                .findFirst();
    }

    private static boolean hasLooseRelease(Stroke stroke) {
        return stroke.first().marks().bends().stream()
                .findFirst()
                .filter(step -> step.kind() == BendStep.Kind.RELEASE)
                .isPresent();
    }

    private static Optional<Fraction> unreadBend(Sounding note) {
        return note.bend().isPresent()
                ? Optional.empty()
                : note.bends().stream()
                        .map(BendStep::semitones)
                        .filter(Fraction::isPositive)
                        .max(Comparator.naturalOrder());
    }

    /** A text that stands for the bend itself says nothing more. */
    private static Optional<Fraction> bendLabel(Sounding note) {
        return note.stroke().marks().bends().isEmpty()
                ? Optional.empty()
                : note.stroke().marks().bendText();
    }
}
