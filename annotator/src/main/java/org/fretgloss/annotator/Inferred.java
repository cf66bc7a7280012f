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
        List<Note> written = analysis.fingering().written().notes();
        boolean anyOffNeck = written.stream().anyMatch(note -> hasNoPlace(note) && !isWithout(note));
        return (anyOffNeck ? Optional.of(unusable(written)) : missing(analysis))
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
                ? missing(analysis).map(what -> what + ", and nothing is doubted for want of them")
                : Optional.of(leftOut)
                        .filter(names -> !names.isEmpty())
                        .map(names ->
                                "the score has no strings and frets, and these checks, which need them, were left out: "
                                        + String.join(", ", names));
    }

    /** Whether any note has string and fret, be they on the neck or not. */
    static boolean tellsFrets(Solo solo) {
        return solo.hasFrets()
                || solo.notes().stream()
                        .anyMatch(note -> note.written().signs().offNeck().isPresent());
    }

    /** Whether any note has no place on the neck that could be looked at. */
    static boolean lacksPlaces(Analysis analysis) {
        return analysis.fingering().written().notes().stream().anyMatch(Inferred::hasNoPlace);
    }

    private static boolean hasNoPlace(Note note) {
        return note.at().isEmpty() && !note.isDead();
    }

    /** A place off the neck is told as such, and is not missing. */
    private static boolean isWithout(Note note) {
        return hasNoPlace(note) && note.written().signs().offNeck().isEmpty();
    }

    private static Optional<String> missing(Analysis analysis) {
        List<Note> written = analysis.fingering().written().notes();
        return analysis.fingering().inferred().isEmpty() || written.stream().noneMatch(Inferred::isWithout)
                ? Optional.empty()
                : Optional.of(missing(written));
    }

    private static String unusable(List<Note> written) {
        long without = written.stream().filter(Inferred::hasNoPlace).count();
        return "string and fret are missing or off the neck for " + without + " of " + written.size() + " notes";
    }

    private static String missing(List<Note> written) {
        long without = written.stream().filter(Inferred::isWithout).count();
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
