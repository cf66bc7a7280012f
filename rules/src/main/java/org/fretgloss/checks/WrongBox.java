package org.fretgloss.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.OutsideJudge;
import org.fretgloss.analysis.OutsideKind;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.Neck;
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
 * inside all three: the commonest slip of a transcriber's finger.
 */
final class WrongBox implements Rule {

    /** A handful of notes makes no scale to be outside of. */
    private static final int ENOUGH_NOTES = 12;

    private static final int TRITONE = 6;

    /** Semitones of a step of the scale. */
    private static final int STEP = 2;

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        if (analysis.solo().notes().stream().filter(Note::isPitched).count() < ENOUGH_NOTES) {
            return Stream.of();
        }
        OutsideJudge judge = new OutsideJudge(analysis);
        Function<Note, Integer> stray = UsualOffset.strayFrom(analysis.solo());
        Repeats repeats = Repeats.of(analysis.solo());
        return analysis.solo().notes().stream()
                // where staff and tab disagree, the fret is doubted already
                .filter(note -> stray.apply(note) == 0)
                .filter(note -> Fretted.isPlain(note) && isUnexplained(analysis, judge, note))
                .filter(note -> isAlone(analysis, note) && !repeats.isPlayedTwice(note))
                .flatMap(note -> meant(analysis, note).map(place -> found(analysis, note, place)).stream());
    }

    /** What leads somewhere, or is one of a blues' usual notes, is meant. */
    private static boolean isUnexplained(Analysis analysis, OutsideJudge judge, Note note) {
        return judge.judge(note)
                .filter(verdict -> !verdict.clash() && !isBlueNote(analysis, note))
                .filter(verdict -> verdict.kind() == OutsideKind.OUTSIDE
                        || (verdict.kind() == OutsideKind.PASSING && !isInRun(analysis.solo(), note)))
                .isPresent();
    }

    /** In a minor home the ♭5 is at home in all but name. */
    private static boolean isBlueNote(Analysis analysis, Note note) {
        HomeScale home = analysis.homeAt(note).scale();
        return !home.scale().hasMajorThird() && home.degreeOf(note.heardMidi()).chroma() == TRITONE;
    }

    /** A passing note that is come to by a leap passes nothing. */
    private static boolean isInRun(Solo solo, Note note) {
        int from = solo.before(note)
                .map(before -> note.heardMidi() - before.heardMidi())
                .orElse(0);
        int to = solo.after(note)
                .map(after -> after.heardMidi() - note.heardMidi())
                .orElse(0);
        return Math.abs(from) <= STEP && Math.abs(to) <= STEP && Integer.signum(from) == Integer.signum(to);
    }

    /** Notes outside side by side are a line of their own. */
    private static boolean isAlone(Analysis analysis, Note note) {
        Solo solo = analysis.solo();
        return Stream.concat(solo.before(note).stream(), solo.after(note).stream())
                .filter(Note::isPitched)
                .allMatch(analysis::isInside);
    }

    private static Optional<StringFret> meant(Analysis analysis, Note note) {
        StringFret at = note.at().orElseThrow();
        Optional<Box> box = analysis.boxes().boxOf(note);
        if (box.filter(inForce -> inForce.patternHolds(at)).isPresent()) {
            return Optional.empty();
        }
        Stream<StringFret> candidates = Stream.of(
                new StringFret(at.string(), at.fret() - 1),
                new StringFret(at.string(), at.fret() + 1),
                new StringFret(at.string() - 1, at.fret()),
                new StringFret(at.string() + 1, at.fret()));
        return candidates
                .filter(place -> analysis.solo().tuning().hasString(place.string()) && Neck.holds(place))
                .filter(place ->
                        box.filter(inForce -> inForce.patternHolds(place)).isPresent())
                .filter(place -> isInside(analysis, note, place))
                .min(likeliestFirst(analysis, note));
    }

    private static boolean isInside(Analysis analysis, Note note, StringFret place) {
        int midi = heard(analysis, note, place);
        boolean chordTone = analysis.chordAt(note)
                .filter(chord -> chord.contains(Math.floorMod(midi, 12)))
                .isPresent();
        return chordTone || analysis.homeAt(note).scale().contains(midi);
    }

    private static int heard(Analysis analysis, Note note, StringFret place) {
        return analysis.solo().tuning().midi(place) + note.heardMidi() - note.midi();
    }

    /** The same string first; then a note that is not the neighbours' own, which a player would not have struck again. */
    private static Comparator<StringFret> likeliestFirst(Analysis analysis, Note note) {
        List<Note> neighbours = Stream.concat(
                        analysis.solo().before(note).stream(), analysis.solo().after(note).stream())
                .toList();
        return Comparator.<StringFret>comparingInt(
                        place -> place.string() == note.at().orElseThrow().string() ? 0 : 1)
                .thenComparingInt(place ->
                        neighbours.stream().anyMatch(other -> other.heardMidi() == heard(analysis, note, place))
                                ? 1
                                : 0)
                .thenComparingInt(place -> leap(analysis, note, place, neighbours));
    }

    private static int leap(Analysis analysis, Note note, StringFret place, List<Note> neighbours) {
        return neighbours.stream()
                .mapToInt(other -> Math.abs(other.heardMidi() - heard(analysis, note, place)))
                .sum();
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
