package org.fretgloss.checks;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Note;

/** A note whose written pitch is not what its string and fret sound, in a part whose other notes agree. */
final class PitchAgainstFret implements Rule {

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
        Function<Note, Integer> stray = UsualOffset.strayFrom(analysis.solo());
        return analysis.solo().notes().stream()
                .filter(note -> stray.apply(note) != 0 && Math.abs(stray.apply(note)) != OctaveFret.OCTAVE)
                .map(note -> found(analysis, note, stray.apply(note)));
    }

    private static Finding found(Analysis analysis, Note note, int stray) {
        Finding.Builder finding = Finding.at(note)
                .explain("By the staff it sounds %s, by string and fret %s, %s %s: one of the two is a slip."
                        .formatted(
                                analysis.homeAt(note).spell(note.midi() + stray),
                                note.pitch(),
                                Semitones.of(Math.abs(stray)),
                                stray > 0 ? "lower" : "higher"))
                .value("semitones", stray);
        return meant(analysis, note, stray)
                .map(suggestion -> finding.doubt(Severity.ERROR, suggestion))
                .orElseGet(() -> finding.doubt(Severity.ERROR))
                .build();
    }

    /** The fret on the same string that sounds what the staff writes. */
    private static Optional<Suggestion> meant(Analysis analysis, Note note, int stray) {
        return note.at()
                .map(at -> new StringFret(at.string(), at.fret() + stray))
                .filter(place -> Neck.holds(place, analysis.solo().tuning()))
                .map(at -> Suggestion.of(at, analysis.homeAt(note).spell(note.midi() + stray)));
    }
}
