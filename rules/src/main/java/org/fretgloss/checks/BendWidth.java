package org.fretgloss.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/** A bend that no finger makes, a text that contradicts its width, or a release without a bend. */
final class BendWidth implements Rule {

    private static final Option<Fraction> WIDEST = Option.ofFraction(
            "widest", Fraction.of(4), Fraction.ONE, Fraction.of(12), "widest bend that is believed, in semitones");

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(WIDEST);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Fraction widest = settings.get(WIDEST);
        return analysis.solo().notes().stream()
                .filter(note -> !note.has(Technique.WITH_BAR))
                .flatMap(note -> note
                        .bend()
                        .flatMap(bend -> doubt(note, bend, widest))
                        .or(() -> unread(note, widest))
                        .or(() -> looseRelease(analysis.solo(), note))
                        .stream());
    }

    private static Optional<Finding> unread(Note note, Fraction widest) {
        return note.written().signs().unreadBend().map(semitones -> tooWide(note, semitones, widest));
    }

    /** A release may let down what the note before it on the string holds. */
    private static Optional<Finding> looseRelease(Solo solo, Note note) {
        boolean held = solo.before(note)
                .filter(before -> before.sharesStringWith(note) && before.endMidi() > before.midi())
                .isPresent();
        return note.written().signs().looseRelease() && !held
                ? Optional.of(Finding.at(note)
                        .doubt(Severity.WARNING)
                        .explain("A bend is released here, and none was made.")
                        .build())
                : Optional.empty();
    }

    private static Optional<Finding> doubt(Note note, Bend bend, Fraction widest) {
        if (bend.width().isMoreThan(widest)) {
            return Optional.of(tooWide(note, bend.width(), widest));
        }
        if (note.at().filter(StringFret::isOpen).isPresent()) {
            return Optional.of(found(note, bend.width(), "An open string cannot be bent by a finger."));
        }
        return note.written()
                .signs()
                .bendLabel()
                .filter(label -> !label.equals(bend.width()))
                .map(label -> otherLabel(note, bend, label));
    }

    private static Finding otherLabel(Note note, Bend bend, Fraction label) {
        return Finding.at(note)
                .doubt(Severity.WARNING)
                .explain("The text beside the bend says %s semitones, the bend itself %s."
                        .formatted(Glyphs.of(label), Glyphs.of(bend.width())))
                .value("semitones", bend.width().toDouble())
                .build();
    }

    private static Finding tooWide(Note note, Fraction semitones, Fraction widest) {
        return found(
                note,
                semitones,
                "A bend of %s semitones is wider than a finger makes; %s is the widest that is played."
                        .formatted(Glyphs.of(semitones), Glyphs.of(widest)));
    }

    private static Finding found(Note note, Fraction semitones, String why) {
        return Finding.at(note)
                .doubt(Severity.ERROR)
                .explain(why + " If the vibrato bar did it, say so in the score.")
                .value("semitones", semitones.toDouble())
                .build();
    }
}
