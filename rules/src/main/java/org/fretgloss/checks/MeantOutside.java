package org.fretgloss.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.OutsideJudge;
import org.fretgloss.analysis.OutsideJudge.Verdict;
import org.fretgloss.analysis.OutsideKind;
import org.fretgloss.analysis.Pauses;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/**
 * Tells the outside notes that a player means from those that merely stand where such a note could. A mark names every
 * note that leads on by step; before a note is called a slip, the leading has to be what hands do: slurred, a run of
 * steps one way, a fret into a chord tone, an enclosure that closes from below, or a colour that the solo has shown to
 * be its own.
 */
final class MeantOutside {

    /** Semitones of the widest step of a scale. */
    static final int STEP = 2;

    private static final int TRITONE = 6;

    /** The 2, 3 and 6, in semitones above the tonic. */
    private static final Set<Integer> MAJOR_COLOUR = Set.of(2, 4, 9);

    /** Bars on either side in which a colour that is meant is heard again. */
    private static final int BARS_NEAR = 2;

    /** How often a fret is played nearby that the hand is used to. */
    private static final int HABIT = 2;

    private final Analysis analysis;
    private final OutsideJudge judge;
    private final Pauses pauses;

    /** How often each pitch class sounds in the solo. */
    private final Map<Integer, Long> soundings;

    MeantOutside(Analysis analysis) {
        this.analysis = analysis;
        this.judge = new OutsideJudge(analysis);
        this.pauses = Pauses.of(analysis.silences());
        this.soundings = analysis.solo().notes().stream()
                .filter(Note::isPitched)
                .collect(Collectors.groupingBy(note -> Math.floorMod(note.heardMidi(), 12), Collectors.counting()));
    }

    /** Whether a note is outside, and nothing says that it is meant. What the scale holds is no slip, whatever it clashes with. */
    boolean isUnexplained(Note note) {
        return judge.judge(note)
                .filter(verdict -> !analysis.isInside(note))
                .filter(verdict -> !isMeant(note, verdict))
                .isPresent();
    }

    private boolean isMeant(Note note, Verdict verdict) {
        return isSlurred(note) || isInRun(note, verdict) || isOwnColour(note, verdict) || leadsIn(note, verdict);
    }

    /** Nobody slurs to or from a slip of the eye. */
    private boolean isSlurred(Note note) {
        return note.attack() != Attack.PICKED
                || note.bend().isPresent()
                || after(note).filter(next -> next.attack() != Attack.PICKED).isPresent();
    }

    /** By steps one way, one of them a semitone; on a beat only where it leads to a chord tone. */
    private boolean isInRun(Note note, Verdict verdict) {
        if (note.beat().isWhole() && verdict.target().isEmpty()) {
            return false;
        }
        int from = before(note).map(before -> interval(before, note)).orElse(0);
        int to = after(note).map(after -> interval(note, after)).orElse(0);
        return isStep(from)
                && isStep(to)
                && Integer.signum(from) == Integer.signum(to)
                && Math.min(Math.abs(from), Math.abs(to)) < STEP;
    }

    private static boolean isStep(int interval) {
        return interval != 0 && Math.abs(interval) <= STEP;
    }

    private boolean leadsIn(Note note, Verdict verdict) {
        return switch (verdict.kind()) {
            case APPROACH ->
                verdict.target()
                        .filter(target -> isEntered(note, target) || slipsDown(note, target))
                        .isPresent();
            case ENCLOSURE ->
                verdict.target().filter(target -> isEntered(note, target)).isPresent();
            case PASSING, ADDED, OUTSIDE -> false;
        };
    }

    /** From below: on one string the finger moves up a fret; across strings a foreign note is doubted. */
    private boolean isEntered(Note note, Note target) {
        Note last =
                after(note).filter(next -> !next.onset().equals(target.onset())).orElse(note);
        return interval(last, target) == 1
                && (last.index() != note.index() || note.sharesStringWith(target) || !isForeign(note));
    }

    /** From above: a fret down on one string, off the beat and onto one. */
    private static boolean slipsDown(Note note, Note target) {
        return interval(note, target) == -1
                && note.sharesStringWith(target)
                && !note.beat().isWhole()
                && target.beat().isWhole();
    }

    /** Whether it sounds nowhere else in the solo, and stands beside a fret that is the hand's usual one there. */
    private boolean isForeign(Note note) {
        return !isHeardElsewhere(note) && standsBesideHabit(note);
    }

    /** Whether the fret below or above is played again and again around it. */
    private boolean standsBesideHabit(Note note) {
        return note.at().stream()
                .flatMap(at -> Stream.of(-1, 1).map(way -> new StringFret(at.string(), at.fret() + way)))
                .anyMatch(beside -> near(note)
                                .filter(other ->
                                        other.at().filter(beside::equals).isPresent())
                                .count()
                        >= HABIT);
    }

    /**
     * A usual added note of a blues moves on by step; the ♭5 of a minor home is heard again besides; the major colour of a
     * minor home is heard as a whole.
     */
    private boolean isOwnColour(Note note, Verdict verdict) {
        boolean movesOn =
                after(note).filter(next -> isStep(interval(note, next))).isPresent();
        if (verdict.kind() == OutsideKind.ADDED) {
            return (movesOn && !isForeign(note)) || (isHeardNearby(note) && isOfMajorColour(note));
        }
        return isHeardNearby(note)
                && (verdict.clash() || isOfMajorColour(note) || (minorDegree(note) == TRITONE && movesOn));
    }

    private boolean isHeardNearby(Note note) {
        return near(note).anyMatch(other -> isSamePitchClass(note, other));
    }

    private boolean isHeardElsewhere(Note note) {
        return soundings.getOrDefault(Math.floorMod(note.heardMidi(), 12), 0L) > 1;
    }

    private static boolean isSamePitchClass(Note one, Note other) {
        return Math.floorMod(one.heardMidi() - other.heardMidi(), 12) == 0;
    }

    private Stream<Note> near(Note note) {
        List<Note> notes = analysis.solo().notes();
        Stream<Note> earlier = IntStream.iterate(note.index() - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(notes::get)
                .takeWhile(other -> isNear(other, note));
        Stream<Note> later =
                notes.subList(note.index() + 1, notes.size()).stream().takeWhile(other -> isNear(note, other));
        return Stream.concat(earlier, later).filter(Note::isPitched);
    }

    private static boolean isNear(Note earlier, Note later) {
        return later.bar().index() - earlier.bar().index() <= BARS_NEAR;
    }

    /** One of the 2, 3 and 6 over a minor home, where all three sound around it. */
    private boolean isOfMajorColour(Note note) {
        return MAJOR_COLOUR.contains(minorDegree(note))
                && near(note)
                                .map(this::minorDegree)
                                .filter(MAJOR_COLOUR::contains)
                                .distinct()
                                .count()
                        == MAJOR_COLOUR.size();
    }

    /** Semitones above the tonic of a minor home; negative in a major one. */
    private int minorDegree(Note note) {
        HomeScale home = analysis.homeAt(note).scale();
        return home.scale().hasMajorThird()
                ? -1
                : home.degreeOf(note.heardMidi()).chroma();
    }

    private Optional<Note> before(Note note) {
        return analysis.solo().before(note).filter(Note::isPitched).filter(before -> !pauses.between(before, note));
    }

    private Optional<Note> after(Note note) {
        return analysis.solo().after(note).filter(Note::isPitched).filter(after -> !pauses.between(note, after));
    }

    private static int interval(Note from, Note to) {
        return to.heardMidi() - from.heardMidi();
    }
}
