package org.fretgloss.annotator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Harmony;
import org.fretgloss.annotator.read.Backing;
import org.fretgloss.fingering.Fingering;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.Tuning;
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
        Fingering fingering = analysis.fingering();
        if (!fingering.inferred().isEmpty()) {
            notices.add(missing(fingering.written().notes())
                    + ": they are inferred, and boxes and reaches are less sure; a tablature staff would settle them");
        }
        Tuning tuning = analysis.solo().tuning();
        Predicate<Note> onTheNeck = note -> !Neck.placesOf(note.midi(), tuning).isEmpty();
        unplayable(
                        analysis,
                        onTheNeck.negate(),
                        "no string reaches ",
                        "check the tuning, the clef and the transposition")
                .ifPresent(notices::add);
        unplayable(analysis, onTheNeck, "no string is left for ", "more notes sound together than one guitar plays")
                .ifPresent(notices::add);
        return notices;
    }

    private static String missing(List<Note> written) {
        long without = written.stream()
                .filter(note -> note.at().isEmpty() && !note.isDead())
                .count();
        return without == written.size()
                ? "the score has no strings and frets"
                : "string and fret are missing for " + without + " of " + written.size() + " notes";
    }

    private static Optional<String> unplayable(Analysis analysis, Predicate<Note> which, String why, String advice) {
        List<Note> notes = analysis.unplayable().stream().filter(which).toList();
        return notes.stream()
                .findFirst()
                .map(first -> why + first.pitch() + " in " + analysis.placeOf(first)
                        + (notes.size() == 1 ? "" : " and " + (notes.size() - 1) + " more")
                        + ": such notes are left without a fret; " + advice);
    }
}
