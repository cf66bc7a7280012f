package org.fretgloss.checks;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * A lone note outside the scale, the chord and the box's pattern, which one fret up or down, or the next string, would put
 * inside: the commonest slip of a transcriber's finger.
 */
final class WrongBox implements Rule {

    /** A handful of notes makes no scale to be outside of. */
    private static final int ENOUGH_NOTES = 12;

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
        Solo solo = analysis.solo();
        if (solo.notes().stream().filter(Note::isPitched).count() < ENOUGH_NOTES) {
            return Stream.of();
        }
        MeantOutside outside = new MeantOutside(analysis);
        Predicate<Note> suspect = suspects(solo);
        return Stream.concat(
                solo.notes().stream().filter(suspect).flatMap(note -> doubt(analysis, outside, note).stream()),
                ThinWitness.of(analysis)
                        .filter(suspect)
                        .flatMap(
                                note -> analysis
                                        .asIfUnheard(note)
                                        .flatMap(other -> doubt(other, new MeantOutside(other), note))
                                        .stream()));
    }

    /** Plainly fretted and in no figure that is played twice; where staff and tab disagree, the fret is doubted already. */
    private static Predicate<Note> suspects(Solo solo) {
        var stray = UsualOffset.strayFrom(solo);
        Repeats repeats = Repeats.of(solo);
        return note -> Fretted.isPlain(note) && stray.apply(note) == 0 && !repeats.isPlayedTwice(note);
    }

    private static Optional<Finding> doubt(Analysis analysis, MeantOutside outside, Note note) {
        return outside.isUnexplained(note)
                ? new RightFret(analysis, note)
                        .find()
                        .filter(meant -> isAlone(analysis, outside, note, meant))
                        .map(meant -> found(analysis, note, meant))
                : Optional.empty();
    }

    /**
     * Notes outside side by side, a step apart, are a line of their own; but not where the first would lead to the second,
     * put right, by a semitone.
     */
    private static boolean isAlone(Analysis analysis, MeantOutside outside, Note note, StringFret meant) {
        Solo solo = analysis.solo();
        int right = solo.tuning().midi(meant);
        return Stream.concat(
                        solo.before(note).filter(other -> Math.abs(other.heardMidi() - right) != 1).stream(),
                        solo.after(note).stream())
                .filter(Note::isPitched)
                .filter(other -> Math.abs(other.heardMidi() - note.heardMidi()) <= MeantOutside.STEP)
                .noneMatch(outside::isUnexplained);
    }

    private static Finding found(Analysis analysis, Note note, StringFret meant) {
        int midi = analysis.solo().tuning().midi(meant);
        Box box = analysis.boxes().boxOf(note).orElseThrow();
        return Finding.at(note)
                .doubt(
                        Severity.WARNING,
                        Suggestion.of(meant, analysis.homeAt(note).spell(midi)))
                .explain("%s lies outside %s%s and box %d, and leads nowhere; %s lies inside."
                        .formatted(
                                analysis.spell(note),
                                analysis.homeAt(note).scale(),
                                analysis.chordAt(note)
                                        .map(chord -> ", " + chord)
                                        .orElse(""),
                                box.number(),
                                meant.string() == note.at().orElseThrow().string()
                                        ? "fret " + meant.fret()
                                        : "string " + meant.string()))
                .value("degree", analysis.degreeOf(note))
                .build();
    }
}
