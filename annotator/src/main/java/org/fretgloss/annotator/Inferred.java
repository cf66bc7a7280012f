package org.fretgloss.annotator;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Harmony;
import org.fretgloss.annotator.read.Backing;
import org.fretgloss.solo.Note;

/** What the user is told where strings and frets, or chords, are not in the score. */
final class Inferred {

    private Inferred() {}

    static List<String> notices(Analysis analysis, Backing backing) {
        List<String> notices = new ArrayList<>();
        if (analysis.harmony().source() == Harmony.Source.INFERRED) {
            notices.add("the score names no chords: they are inferred from what " + String.join(", ", backing.parts())
                    + (backing.parts().size() == 1 ? " plays" : " play")
                    + ", and marks that need a chord are less sure; --chords or --form give them");
        }
        int inferred = analysis.fingering().inferred().size();
        int notes = analysis.solo().notes().size();
        if (inferred > 0) {
            notices.add((inferred == notes
                            ? "the score has no strings and frets"
                            : "string and fret are missing for " + inferred + " of " + notes + " notes")
                    + ": they are inferred, and boxes and reaches are less sure; a tablature staff would settle them");
        }
        List<Note> unplayable = analysis.unplayable();
        if (!unplayable.isEmpty()) {
            Note first = unplayable.get(0);
            notices.add("no string reaches " + first.pitch() + " in " + analysis.placeOf(first)
                    + (unplayable.size() == 1 ? "" : " and " + (unplayable.size() - 1) + " more")
                    + ": such notes are left without a fret; check the tuning, the clef and the transposition");
        }
        return notices;
    }
}
