package org.fretgloss.annotator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Harmony;
import org.fretgloss.annotator.read.Backing;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

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

    /** That strings and frets are the analysis's own; none where the score has them all. */
    static Optional<String> frets(Analysis analysis) {
        boolean anyOffNeck = analysis.fingering().written().notes().stream().anyMatch(Inferred::isOffNeck);
        return lacking(analysis, Inferred::hasNoPlace, anyOffNeck ? "missing or off the neck" : "missing")
                .map(
                        what -> what
                                + ": they are inferred, and boxes and reaches are less sure; a tablature staff would settle them");
    }

    /**
     * What proof-reading, which doubts no place that the score does not say, could not look at.
     *
     * @param leftOut the checks that were not asked
     */
    static Optional<String> unchecked(Analysis analysis, List<String> leftOut) {
        return tellsFrets(analysis.fingering().written())
                ? lacking(analysis, note -> hasNoPlace(note) && !isOffNeck(note), "missing")
                        .map(what -> what + ", and nothing is doubted for want of them")
                : Optional.of(leftOut)
                        .filter(names -> !names.isEmpty())
                        .map(names ->
                                "the score has no strings and frets, and these checks, which need them, were left out: "
                                        + String.join(", ", names));
    }

    /** Whether any note has string and fret, be they on the neck or not. */
    static boolean tellsFrets(Solo solo) {
        return solo.hasFrets() || solo.notes().stream().anyMatch(Inferred::isOffNeck);
    }

    /** Whether any note has no place on the neck that could be looked at. */
    static boolean lacksPlaces(Analysis analysis) {
        return analysis.fingering().written().notes().stream().anyMatch(Inferred::hasNoPlace);
    }

    private static boolean hasNoPlace(Note note) {
        return note.at().isEmpty() && !note.isDead();
    }

    /** A place off the neck is told as such by proof-reading. */
    private static boolean isOffNeck(Note note) {
        return note.written().signs().offNeck().isPresent();
    }

    /** For how many notes that place is lacking, and how; none where it is for none, or where none was inferred. */
    private static Optional<String> lacking(Analysis analysis, Predicate<Note> which, String how) {
        List<Note> written = analysis.fingering().written().notes();
        long count = written.stream().filter(which).count();
        if (count == 0 || analysis.fingering().inferred().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                tellsFrets(analysis.fingering().written())
                        ? "string and fret are " + how + " for " + count + " of " + written.size() + " notes"
                        : "the score has no strings and frets");
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
