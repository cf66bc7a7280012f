package org.fretgloss.checks;

import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Note;

/** A pitch spelled against the chord it belongs to, or against the scale: D♭ for the 3 of A7. */
final class Spelling implements Rule {

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return analysis.solo().notes().stream()
                .filter(Note::isPitched)
                .flatMap(note -> asked(analysis, note)
                        .filter(pitch -> isRespelled(note.written().pitch(), pitch))
                        .map(pitch -> found(analysis, note, pitch))
                        .stream());
    }

    /** As the chord spells it; else as the scale does. What is in neither is a chromatic note, spelled either way. */
    private static Optional<Pitch> asked(Analysis analysis, Note note) {
        Optional<ChordSymbol> chord = analysis.chordAt(note);
        Optional<Degree> tone = chord.flatMap(symbol -> symbol.degreeOf(Math.floorMod(note.midi(), 12)));
        if (chord.isPresent() && tone.isPresent()) {
            return Optional.of(Pitch.spelled(note.midi(), chord.get().root().plus(tone.get())));
        }
        HomeScale home = analysis.homeAt(note).scale();
        return home.contains(note.midi()) ? Optional.of(home.spell(note.midi())) : Optional.empty();
    }

    /** The same sound under another name; a pitch written off its fret is no question of spelling. */
    private static boolean isRespelled(Pitch written, Pitch asked) {
        return Math.floorMod(written.midi() - asked.midi(), 12) == 0
                && !written.name().equals(asked.name());
    }

    private static Finding found(Analysis analysis, Note note, Pitch asked) {
        String reason = analysis.chordAt(note)
                .filter(chord -> chord.contains(Math.floorMod(note.midi(), 12)))
                .map(chord -> "a tone of " + chord)
                .orElseGet(() -> "in " + analysis.homeAt(note).scale());
        return Finding.at(note)
                .doubt(Severity.HINT, Suggestion.of(asked))
                .explain("%s is %s, which is spelled %s."
                        .formatted(note.written().pitch().name(), reason, asked.name()))
                .build();
    }
}
