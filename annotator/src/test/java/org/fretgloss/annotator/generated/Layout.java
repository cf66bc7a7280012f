package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.annotator.generated.NoteMarkup.Place;

/** How the solo is laid out over parts and staves. */
enum Layout {
    TABLATURE,
    NOTATION,
    NOTATION_WITH_FRETS,
    TWO_STAVES,
    TWO_PARTS;

    /** The part that has the chords where the solo has none. */
    static final String CHORDS = "P9";

    private static final String TABLATURE_PART = "P2";
    private static final List<Layout> OF_ONE_STAFF = List.of(TABLATURE, NOTATION, NOTATION_WITH_FRETS);

    static Layout of(Dice dice) {
        if (dice.has(Feature.TWO_STAVES)) {
            return TWO_STAVES;
        }
        return dice.has(Feature.TWO_PARTS) ? TWO_PARTS : dice.oneOf(OF_ONE_STAFF);
    }

    List<String> parts(boolean withChords) {
        List<String> parts = new ArrayList<>(this == TWO_PARTS ? List.of("P1", TABLATURE_PART) : List.of("P1"));
        if (withChords) {
            parts.add(CHORDS);
        }
        return parts;
    }

    /** Whether a part's only staff is tablature. */
    boolean isTablature(String part) {
        return this == TABLATURE || part.equals(TABLATURE_PART);
    }

    /** The staves of a part, each of which has the whole solo. */
    List<Place> places(String part, boolean lyrics) {
        return this == TWO_STAVES
                ? List.of(new Place(1, 1, false, lyrics), new Place(2, 5, true, false))
                : List.of(new Place(0, 1, isTablature(part) || this == NOTATION_WITH_FRETS, lyrics));
    }
}
