package org.fretgloss.checks;

import java.util.Optional;
import java.util.Set;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Melody;
import org.fretgloss.analysis.OutsideJudge;
import org.fretgloss.analysis.OutsideJudge.Verdict;
import org.fretgloss.analysis.OutsideKind;
import org.fretgloss.analysis.Pauses;
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

    private static final int SEVENTH = 11;

    private static final int SEVEN_NOTES = 7;

    /** The 1, 2 and 5, in semitones above the tonic: where the 7 goes, or with what it makes the V. */
    private static final Set<Integer> AFTER_SEVENTH = Set.of(0, 2, 7);

    /** How often a pitch sounds at most that is no habit of the solo. */
    private static final int LONE = 2;

    private final Analysis analysis;
    private final OutsideJudge judge;
    private final Pauses pauses;
    private final Melody melody;

    private final Soundings<Integer> pitchClasses;
    private final Habits habits;
    private final Colours colours;

    MeantOutside(Analysis analysis) {
        this.analysis = analysis;
        this.judge = new OutsideJudge(analysis);
        this.pauses = Pauses.of(analysis.silences());
        this.melody = Melody.of(analysis.solo());
        this.pitchClasses = Soundings.of(analysis.solo(), note -> Optional.of(chroma(note)));
        this.habits = new Habits(analysis.solo());
        this.colours = new Colours(analysis, pitchClasses);
    }

    /** Whether a note is outside, and nothing says that it is meant. What the scale holds is no slip, whatever it clashes with. */
    boolean isUnexplained(Note note) {
        return judge.judge(note)
                .filter(verdict -> !analysis.isInside(note))
                .filter(verdict -> !isMeant(note, verdict))
                .isPresent();
    }

    private boolean isMeant(Note note, Verdict verdict) {
        return isSlurred(note)
                || isInRun(note, verdict)
                || isOwnColour(note, verdict)
                || leadsIn(note, verdict)
                || mayBeOfAnUnknownChord(note);
    }

    /** Nobody slurs to or from a slip of the eye; of a double stop each string goes its own way. */
    private boolean isSlurred(Note note) {
        return note.attack() != Attack.PICKED
                || note.bend().isPresent()
                || after(note).filter(next -> next.attack() != Attack.PICKED).isPresent()
                || melody.after(note).stream()
                        .anyMatch(next -> next.attack() != Attack.PICKED && next.sharesStringWith(note));
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
        Note last = melody.after(note).stream()
                .findFirst()
                .filter(next -> !next.onset().equals(target.onset()))
                .orElse(note);
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

    /** Whether its pitch sounds nowhere else in the solo, and it stands beside a fret that the hand is used to. */
    private boolean isForeign(Note note) {
        return pitchClasses.inAll(chroma(note)) == 1 && habits.isBesideOne(note);
    }

    /** A usual added note of a blues moves on by step; a fret that strays from the hand's usual one is no colour of any kind. */
    private boolean isOwnColour(Note note, Verdict verdict) {
        boolean movesOn =
                after(note).filter(next -> isStep(interval(note, next))).isPresent();
        boolean isColour = (verdict.kind() == OutsideKind.ADDED && movesOn)
                || (verdict.clash() && colours.isHeardAgain(note))
                || colours.isOwn(note, movesOn);
        return (movesOn && colours.isDorian(note)) || (isColour && !habits.strays(note));
    }

    /** Semitones above the tonic of a minor home; negative in a major one. */
    private int minorDegree(Note note) {
        HomeScale home = analysis.homeAt(note).scale();
        return home.scale().hasMajorThird()
                ? -1
                : home.degreeOf(note.heardMidi()).chroma();
    }

    /**
     * Where no chord is known, a note may be a tone of one: heard oftener than twice it is doubted by nobody; nor is it
     * where it comes by step and goes on by a semitone, nor as the 7 of a minor home of seven notes that goes to a tone of
     * the V or home.
     */
    private boolean mayBeOfAnUnknownChord(Note note) {
        return analysis.chordAt(note).isEmpty()
                && (pitchClasses.inAll(chroma(note)) > LONE || leadsAnywhere(note) || isLeadingTone(note));
    }

    private boolean leadsAnywhere(Note note) {
        return before(note).filter(before -> isStep(interval(before, note))).isPresent()
                && after(note)
                        .filter(after -> Math.abs(interval(note, after)) == 1)
                        .isPresent();
    }

    private boolean isLeadingTone(Note note) {
        return minorDegree(note) == SEVENTH
                && analysis.homeAt(note).scale().scale().degrees().size() == SEVEN_NOTES
                && after(note)
                        .filter(after -> AFTER_SEVENTH.contains(minorDegree(after)))
                        .isPresent();
    }

    private static int chroma(Note note) {
        return Math.floorMod(note.heardMidi(), 12);
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
