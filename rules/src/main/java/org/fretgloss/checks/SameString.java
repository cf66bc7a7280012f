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
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/** Two notes struck at one moment on one string, at two frets: a string sounds one note at a time. */
final class SameString implements Rule {

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public boolean needsFrets() {
        return true;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return analysis.solo().notes().stream()
                .flatMap(note ->
                        rivalOf(note, analysis.solo().notes()).map(rival -> found(analysis, rival, note)).stream());
    }

    /** The first note before this one, in sounding order, that takes its string at the same moment. */
    private static Optional<Note> rivalOf(Note note, List<Note> notes) {
        if (note.grace() || note.attack() == Attack.TAPPED) {
            return Optional.empty();
        }
        for (int i = note.index() - 1; i >= 0 && notes.get(i).onset().equals(note.onset()); i--) {
            Note other = notes.get(i);
            if (!other.grace() && other.attack() != Attack.TAPPED && takesItsString(note, other)) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    private static boolean takesItsString(Note note, Note other) {
        return note.sharesStringWith(other) && !note.at().equals(other.at());
    }

    private static Finding found(Analysis analysis, Note one, Note other) {
        StringFret first = one.at().orElseThrow();
        return Finding.at(one)
                .to(other)
                .doubt(Severity.ERROR)
                .explain(
                        "At %s string %d is fretted at %d and at %d at the same moment: one of the two belongs on another string."
                                .formatted(
                                        analysis.placeOf(one),
                                        first.string(),
                                        first.fret(),
                                        other.at().orElseThrow().fret()))
                .value("otherFret", other.at().orElseThrow().fret())
                .build();
    }
}
