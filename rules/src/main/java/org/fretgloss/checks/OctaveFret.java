package org.fretgloss.checks;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** A note alone that is fretted twelve frets from where its pitch or its neighbours say. */
final class OctaveFret implements Rule {

    static final int OCTAVE = 12;

    /** How far a note may lie from both neighbours to be near them, in frets: the hand reaches it without a move. */
    private static final int NEAR = 4;

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
        return analysis.solo().notes().stream().flatMap(note -> slip(analysis, note, stray.apply(note)).stream());
    }

    private static Optional<Finding> slip(Analysis analysis, Note note, int stray) {
        if (Math.abs(stray) == OCTAVE) {
            return isOpen(note) || isFretted(note) ? Optional.of(byStaff(analysis, note, stray)) : Optional.empty();
        }
        // Where the staff names yet another fret, the note is doubted already.
        return stray == 0 && isFretted(note) ? byNeighbours(analysis, note) : Optional.empty();
    }

    private static Finding byStaff(Analysis analysis, Note note, int stray) {
        StringFret at = note.at().orElseThrow();
        return found(
                analysis,
                note,
                new StringFret(at.string(), at.fret() + stray),
                "By the staff it sounds %s, by string and fret %s, an octave away."
                        .formatted(
                                Pitch.spelled(note.midi() + stray, note.pitch().name()), note.pitch()));
    }

    private static Optional<Finding> byNeighbours(Analysis analysis, Note note) {
        StringFret at = note.at().orElseThrow();
        return Stream.of(-OCTAVE, OCTAVE)
                .map(frets -> new StringFret(at.string(), at.fret() + frets))
                .filter(place -> Neck.holds(place, analysis.solo().tuning()))
                .filter(meant -> standsAlone(analysis.solo(), note, at, meant))
                .findFirst()
                .map(meant -> found(
                        analysis,
                        note,
                        meant,
                        "The notes before and after it lie by fret %d, and the hand would have to jump there and back."
                                .formatted(meant.fret())));
    }

    private static boolean isOpen(Note note) {
        return note.isPitched() && note.at().filter(StringFret::isOpen).isPresent();
    }

    private static boolean standsAlone(Solo solo, Note note, StringFret at, StringFret meant) {
        Optional<StringFret> before = solo.before(note).flatMap(other -> neighbour(other, note));
        Optional<StringFret> after =
                solo.after(note).flatMap(other -> neighbour(note, other).isPresent() ? other.at() : Optional.empty());
        return before.isPresent()
                && after.isPresent()
                && isNear(before.get(), meant)
                && isNear(after.get(), meant)
                && !isNear(before.get(), at)
                && !isNear(after.get(), at);
    }

    /** The place of the first of two notes, where both are plainly fretted, one goes into the other and no slide lies between. */
    private static Optional<StringFret> neighbour(Note first, Note second) {
        boolean goesOn = !first.grace() && !first.end().isLessThan(second.onset());
        return goesOn && second.attack() != Attack.SLID && isFretted(first) && isFretted(second)
                ? first.at()
                : Optional.empty();
    }

    private static boolean isNear(StringFret one, StringFret other) {
        return Math.abs(one.fret() - other.fret()) <= NEAR;
    }

    /** A tapping finger comes from the other hand. */
    private static boolean isFretted(Note note) {
        return Fretted.isPlain(note) && note.attack() != Attack.TAPPED;
    }

    /** With the fret that was meant, where the neck has it. */
    private static Finding found(Analysis analysis, Note note, StringFret meant, String why) {
        int frets = meant.fret() - note.at().orElseThrow().fret();
        Finding.Builder finding = Finding.at(note).explain(why).value("frets", frets);
        return (Neck.holds(meant, analysis.solo().tuning())
                        ? finding.doubt(
                                Severity.WARNING,
                                Suggestion.of(meant, analysis.homeAt(note).spell(note.midi() + frets)))
                        : finding.doubt(Severity.WARNING))
                .build();
    }
}
