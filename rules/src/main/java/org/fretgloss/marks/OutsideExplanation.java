package org.fretgloss.marks;

import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.OutsideJudge.Verdict;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Note;

/** What a teacher says about an outside note: what it is outside of, and what it does there. */
final class OutsideExplanation {

    private static final Degree BLUE_NOTE = new Degree(5, -1);

    private OutsideExplanation() {}

    static String of(Analysis analysis, Note note, Verdict verdict) {
        return Places.onNeck(analysis, note) + analysis.spell(note) + " is the "
                + analysis.degreeOf(note) + ", " + against(analysis, note, verdict) + ": "
                + role(analysis, note, verdict) + ".";
    }

    /** "outside A minor pentatonic and D7"; a home with a 3 of its own holds the note that clashes. */
    private static String against(Analysis analysis, Note note, Verdict verdict) {
        HomeScale home = analysis.homeAt(note).scale();
        if (home.contains(note.heardMidi())) {
            return verdict.chord()
                    .map(chord -> "in " + home + " but not in " + chord)
                    .orElse("in " + home);
        }
        return "outside " + home + verdict.chord().map(chord -> " and " + chord).orElse("");
    }

    private static String role(Analysis analysis, Note note, Verdict verdict) {
        String target = verdict.target().map(to -> target(analysis, to)).orElse("");
        return switch (verdict.kind()) {
            case ENCLOSURE -> "with the neighbour on the other side it closes in on " + target;
            case APPROACH -> "it leads by a semitone into " + target;
            case PASSING -> "short and off the beat, it passes by step to " + target;
            case ADDED -> "one of the notes that a blues adds to its scale as a matter of course";
            case OUTSIDE ->
                verdict.clash()
                        ? "the 3 of the home chord against a chord that holds its ♭3, the classic clash"
                        : analysis.degreeOf(note).equals(BLUE_NOTE)
                                ? "the blue note, that of the blues scale; nothing near leads on from it"
                                : "nothing near explains it; the ear decides whether it is meant";
        };
    }

    /** "A4, the 5 of D7". */
    private static String target(Analysis analysis, Note note) {
        String tone = analysis.chordToneOf(note)
                .flatMap(degree -> analysis.chordAt(note).map(chord -> ", the " + degree + " of " + chord))
                .orElse("");
        return analysis.spell(note) + tone;
    }
}
