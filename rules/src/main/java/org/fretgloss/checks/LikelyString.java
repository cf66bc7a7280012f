package org.fretgloss.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Pauses;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/** A note for which the hand leaves its box and comes back, though the box holds the same pitch on another string. */
final class LikelyString implements Rule {

    private static final Option<Integer> JUMP =
            Option.ofInt("jump", 2, 1, 12, "least distance from the box's window at which a note is doubted, in frets");

    /** Frets that a finger reaches without the hand leaving. */
    private static final int REACH = 4;

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
        return List.of(JUMP);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        int jump = settings.get(JUMP);
        Pauses pauses = Pauses.of(analysis.silences());
        // Where the staff contradicts the place, the note is doubted already.
        Function<Note, Integer> stray = UsualOffset.strayFrom(analysis.solo());
        return analysis.solo().notes().stream()
                .filter(note -> stray.apply(note) == 0)
                .filter(note -> isFree(note) && Math.abs(analysis.boxes().reachOf(note)) >= jump)
                .filter(note -> jumpsThereAndBack(analysis, pauses, note))
                .flatMap(note -> insideBox(analysis, note).map(meant -> found(analysis, note, meant)).stream());
    }

    /** Of a slide, a hammer-on, a tap or a bend the string is meant. */
    private static boolean isFree(Note note) {
        return Fretted.isPlain(note)
                && note.attack() == Attack.PICKED
                && note.bend().isEmpty();
    }

    private static boolean jumpsThereAndBack(Analysis analysis, Pauses pauses, Note note) {
        Optional<Note> before = analysis.solo().before(note);
        Optional<Note> after = analysis.solo().after(note);
        return before.filter(other -> staysInBox(analysis, other, note) && !pauses.between(other, note))
                        .isPresent()
                && after.filter(other -> staysInBox(analysis, other, note) && !pauses.between(note, other))
                        .filter(other -> other.attack() == Attack.PICKED)
                        .isPresent();
    }

    /**
     * A neighbour of the same pitch makes a unison figure, in which the two strings are the point; a near one on the same
     * string makes a line along it.
     */
    private static boolean staysInBox(Analysis analysis, Note neighbour, Note note) {
        return neighbour.isPitched()
                && !neighbour.onset().equals(note.onset())
                && neighbour.heardMidi() != note.heardMidi()
                && neighbour.at().filter(at -> !at.isOpen()).isPresent()
                && !isWithinReachOnItsString(neighbour, note)
                && analysis.boxes().reachOf(neighbour) == 0
                && analysis.boxes().boxOf(neighbour).equals(analysis.boxes().boxOf(note));
    }

    private static boolean isWithinReachOnItsString(Note neighbour, Note note) {
        return neighbour.sharesStringWith(note)
                && Math.abs(neighbour.at().orElseThrow().fret()
                                - note.at().orElseThrow().fret())
                        <= REACH;
    }

    private static Optional<StringFret> insideBox(Analysis analysis, Note note) {
        Optional<Box> box = analysis.boxes().boxOf(note);
        return Neck.placesOf(note.midi(), analysis.solo().tuning()).stream()
                .filter(place -> !place.isOpen())
                .filter(place ->
                        box.filter(inForce -> inForce.windowHolds(place)).isPresent())
                .findFirst();
    }

    private static Finding found(Analysis analysis, Note note, StringFret meant) {
        int frets = analysis.boxes().reachOf(note);
        Box box = analysis.boxes().boxOf(note).orElseThrow();
        return Finding.at(note)
                .doubt(Severity.WARNING, Suggestion.of(meant, note.pitch()))
                .explain(
                        "The hand would leave box %d (frets %d to %d) by %d frets for one note and come back; the box holds the same %s on string %d."
                                .formatted(
                                        box.number(),
                                        box.lowestFret(),
                                        box.highestFret(),
                                        Math.abs(frets),
                                        note.pitch(),
                                        meant.string()))
                .value("frets", frets)
                .build();
    }
}
