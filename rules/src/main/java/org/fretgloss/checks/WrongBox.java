package org.fretgloss.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.Scale;
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

    private static final int SEVEN_NOTES = 7;

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        if (analysis.solo().notes().stream().filter(Note::isPitched).count() < ENOUGH_NOTES) {
            return Stream.of();
        }
        MeantOutside outside = new MeantOutside(analysis);
        Function<Note, Integer> stray = UsualOffset.strayFrom(analysis.solo());
        Repeats repeats = Repeats.of(analysis.solo());
        return analysis.solo().notes().stream()
                // where staff and tab disagree, the fret is doubted already
                .filter(note -> stray.apply(note) == 0)
                .filter(note -> Fretted.isPlain(note) && outside.isUnexplained(note))
                .filter(note -> isAlone(analysis, outside, note) && !repeats.isPlayedTwice(note))
                .flatMap(note -> meant(analysis, note).map(place -> found(analysis, note, place)).stream());
    }

    /** Notes outside side by side, a step apart, are a line of their own. */
    private static boolean isAlone(Analysis analysis, MeantOutside outside, Note note) {
        Solo solo = analysis.solo();
        return Stream.concat(solo.before(note).stream(), solo.after(note).stream())
                .filter(Note::isPitched)
                .filter(other -> Math.abs(other.heardMidi() - note.heardMidi()) <= MeantOutside.STEP)
                .noneMatch(outside::isUnexplained);
    }

    private static Optional<StringFret> meant(Analysis analysis, Note note) {
        StringFret at = note.at().orElseThrow();
        Optional<Box> box = analysis.boxes().boxOf(note);
        if (box.filter(inForce -> inForce.patternHolds(at)).isPresent()) {
            return Optional.empty();
        }
        Scale scale = analysis.homeAt(note).scale().scale();
        Stream<StringFret> candidates = Stream.of(
                new StringFret(at.string(), at.fret() - 1),
                new StringFret(at.string(), at.fret() + 1),
                new StringFret(at.string() - 1, at.fret()),
                new StringFret(at.string() + 1, at.fret()));
        return candidates
                .filter(place -> analysis.solo().tuning().hasString(place.string())
                        && Neck.holds(place, analysis.solo().tuning()))
                .filter(place ->
                        box.filter(inForce -> holds(inForce, scale, place)).isPresent())
                .filter(place -> isInside(analysis, note, place))
                .min(likeliestFirst(analysis, note));
    }

    /** A box's pattern is pentatonic: under a larger scale all of its window is the hand's. */
    private static boolean holds(Box box, Scale scale, StringFret place) {
        return box.patternHolds(place) || (scale.degrees().size() >= SEVEN_NOTES && box.windowHolds(place));
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
