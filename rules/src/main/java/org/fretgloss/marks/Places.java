package org.fretgloss.marks;

import org.fretgloss.analysis.Analysis;
import org.fretgloss.solo.Note;

/** Says where a note is, for the beginning of an explanation. */
final class Places {

    private Places() {}

    /** On the neck, where that is known, and in the solo: "String 3, fret 7 (inferred), bar 5 beat 3½: ". */
    static String onNeck(Analysis analysis, Note note) {
        return note.at()
                .map(at -> "String " + at.string() + ", fret " + at.fret()
                        + (analysis.isInferred(note) ? " (inferred), " : ", ") + analysis.placeOf(note) + ": ")
                .orElseGet(() -> inSolo(analysis, note));
    }

    /** "Bar 5 beat 3½: ". */
    static String inSolo(Analysis analysis, Note note) {
        String place = analysis.placeOf(note);
        return Character.toUpperCase(place.charAt(0)) + place.substring(1) + ": ";
    }
}
