package org.fretgloss.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Melody;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/** A hammer-on or pull-off that leads to another string, to the same fret, or further than a hand reaches. */
final class Legato implements Rule {

    private static final Option<Integer> HAND =
            Option.ofInt("hand", 6, 3, 12, "widest hammer-on or pull-off that is believed, in frets");

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public boolean needsFrets() {
        return true;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(HAND);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Melody melody = Melody.of(analysis.solo());
        return analysis.solo().notes().stream()
                .filter(note ->
                        note.isPitched() && note.written().signs().endsLegato() && note.attack() != Attack.TAPPED)
                .flatMap(note -> doubt(melody, note, settings.get(HAND)).stream());
    }

    /** Judged against the note on its string where there is one, however the file numbers the pairs of a chord. */
    private static Optional<Finding> doubt(Melody melody, Note note, int hand) {
        List<Note> before = melody.before(note).stream()
                .filter(other -> other.written().signs().beginsLegato())
                .toList();
        Optional<Note> partner = before.stream().filter(note::sharesStringWith).findFirst();
        if (partner.isPresent()) {
            return partner.flatMap(from -> onOneString(from, note, hand));
        }
        boolean pairedElsewhere =
                before.stream().anyMatch(other -> melody.after(other).stream().anyMatch(other::sharesStringWith));
        return before.stream()
                .filter(from -> from.at().isPresent() && note.at().isPresent() && !pairedElsewhere)
                .findFirst()
                .map(from -> found(
                        from,
                        note,
                        Severity.ERROR,
                        "It leads from string %d to string %d: a finger hammers and pulls on one string only."
                                .formatted(string(from), string(note))));
    }

    private static Optional<Finding> onOneString(Note from, Note note, int hand) {
        int way = Math.abs(fret(note) - fret(from));
        if (way == 0 && note.midi() == from.endMidi()) {
            return Optional.of(
                    found(from, note, Severity.ERROR, "It leads from fret %d to the same fret.".formatted(fret(from))));
        }
        boolean oneFinger = fret(from) == 0 || fret(note) == 0 || from.attack() == Attack.TAPPED;
        if (way > hand && !oneFinger) {
            return Optional.of(found(
                    from,
                    note,
                    Severity.WARNING,
                    "It leads over %d frets, from %d to %d: more than a hand.".formatted(way, fret(from), fret(note))));
        }
        return Optional.empty();
    }

    private static int fret(Note note) {
        return note.at().map(StringFret::fret).orElseThrow();
    }

    private static int string(Note note) {
        return note.at().map(StringFret::string).orElseThrow();
    }

    private static Finding found(Note from, Note note, Severity severity, String why) {
        return Finding.at(from)
                .to(note)
                .doubt(severity)
                .explain("A hammer-on or pull-off begins here. " + why)
                .build();
    }
}
