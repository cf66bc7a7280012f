package org.fretgloss.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;

/** A tie to another fret or string, or a tie that ends nowhere. */
final class TieRule implements Rule {

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        List<Note> loose = analysis.solo().notes().stream()
                .filter(note -> note.written().signs().tieFromNowhere())
                .toList();
        return analysis.solo().notes().stream()
                .filter(note -> !note.grace())
                .flatMap(note -> doubt(note, loose).stream());
    }

    private static Optional<Finding> doubt(Note note, List<Note> loose) {
        return note.written()
                .signs()
                .tiedTo()
                .map(place -> toAnotherPlace(note, place))
                .or(() -> note.written().tieOpen() && !mayEndElsewhere(note)
                        ? Optional.of(open(note, loose))
                        : Optional.empty());
    }

    private static Finding toAnotherPlace(Note note, StringFret place) {
        return Finding.at(note)
                .doubt(Severity.ERROR)
                .explain("The tie leads to string %d fret %d: a tied note sounds on where it is."
                        .formatted(place.string(), place.fret()))
                .build();
    }

    /** A tie into a repeat ends where the repeat begins, and one that lets a note ring ends nowhere on purpose. */
    private static boolean mayEndElsewhere(Note note) {
        return note.has(Technique.LET_RING) || note.bar().repeatsBackward();
    }

    /** Where a tie ends at the moment at which this one is left open, the two belong together. */
    private static Finding open(Note note, List<Note> loose) {
        return loose.stream()
                .filter(other -> other.onset().equals(note.end()))
                .findFirst()
                .map(other -> Finding.at(note)
                        .to(other)
                        .doubt(Severity.ERROR)
                        .explain("The tie leads to %s, another note: a tied note sounds on where it is."
                                .formatted(other.at()
                                        .map(TieRule::place)
                                        .orElseGet(() -> other.pitch().toString())))
                        .build())
                .orElseGet(() -> Finding.at(note)
                        .doubt(Severity.WARNING)
                        .explain("A tie begins here and ends nowhere.")
                        .build());
    }

    private static String place(StringFret at) {
        return "string " + at.string() + " fret " + at.fret();
    }
}
