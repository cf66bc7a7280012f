package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Judges the notes outside scale and chord by what surrounds them. Where notes are struck together, one of them that
 * fits is enough; across a silence of a beat or more nothing leads anywhere.
 */
public final class OutsideJudge {

    private static final int SEMITONE = 1;
    private static final int WHOLE_TONE = 2;
    private static final Fraction HALF = Fraction.of(1, 2);

    private final Analysis analysis;
    private final BluesNotes blues;
    private final Melody melody;
    private final Pauses pauses;

    public OutsideJudge(Analysis analysis) {
        this.analysis = analysis;
        this.blues = new BluesNotes(analysis);
        this.melody = Melody.of(analysis.solo());
        this.pauses = Pauses.of(analysis.silences());
    }

    /**
     * What an outside note is.
     *
     * @param kind the first that fits
     * @param target the note it leads to, where it leads to one
     * @param chord the chord it is outside of, where one is known
     * @param clash whether it is the home's 3 against a chord that holds the home's ♭3
     */
    public record Verdict(OutsideKind kind, Optional<Note> target, Optional<ChordSymbol> chord, boolean clash) {}

    /** The judgement on a note; none for an inside one, a grace note or a dead note. */
    public Optional<Verdict> judge(Note note) {
        if (!note.isPitched()) {
            return Optional.empty();
        }
        if (analysis.isInside(note)) {
            return blues.clashOf(note)
                    .map(chord -> new Verdict(OutsideKind.OUTSIDE, Optional.empty(), Optional.of(chord), true));
        }
        return Optional.of(leading(note, OutsideKind.ENCLOSURE, enclosed(note))
                .or(() -> leading(note, OutsideKind.APPROACH, approached(note)))
                .or(() -> leading(note, OutsideKind.PASSING, passedTo(note)))
                .orElseGet(() -> standing(note)));
    }

    private Optional<Verdict> leading(Note note, OutsideKind kind, Stream<Note> targets) {
        return targets.findFirst().map(target -> new Verdict(kind, Optional.of(target), analysis.chordAt(note), false));
    }

    private Verdict standing(Note note) {
        OutsideKind kind = blues.isAdded(note) ? OutsideKind.ADDED : OutsideKind.OUTSIDE;
        boolean clash = blues.clashOf(note).isPresent();
        return new Verdict(kind, Optional.empty(), analysis.chordAt(note), clash);
    }

    /** Chord tones that the note encloses, as the first or the second of two neighbours. */
    private Stream<Note> enclosed(Note note) {
        Stream<Note> asFirst = next(note).stream()
                .flatMap(second -> next(second).stream().filter(target -> encloses(note, second, target)));
        Stream<Note> asSecond = previous(note).stream()
                .flatMap(first -> next(note).stream().filter(target -> encloses(first, note, target)));
        return Stream.concat(asFirst, asSecond);
    }

    private boolean encloses(Note first, Note second, Note target) {
        int fromFirst = target.heardMidi() - first.heardMidi();
        int fromSecond = target.heardMidi() - second.heardMidi();
        return Integer.signum(fromFirst) * Integer.signum(fromSecond) < 0
                && Math.abs(fromFirst) <= WHOLE_TONE
                && Math.abs(fromSecond) <= WHOLE_TONE
                && isChordTone(target);
    }

    private Stream<Note> approached(Note note) {
        return next(note).stream().filter(target -> step(note, target) == SEMITONE && isChordTone(target));
    }

    private Stream<Note> passedTo(Note note) {
        boolean isLong =
                note.duration().isMoreThan(note.bar().meter().beatLength().times(HALF));
        if (isLong || note.beat().isWhole()) {
            return Stream.of();
        }
        return next(note).stream()
                .filter(target -> step(note, target) >= SEMITONE && step(note, target) <= WHOLE_TONE)
                .filter(target -> analysis.isInside(target) && !note.duration().isMoreThan(target.duration()));
    }

    private boolean isChordTone(Note note) {
        return analysis.chordToneOf(note).isPresent();
    }

    private static int step(Note from, Note to) {
        return Math.abs(to.heardMidi() - from.heardMidi());
    }

    private List<Note> next(Note note) {
        return melody.after(note).stream()
                .filter(later -> !pauses.between(note, later))
                .toList();
    }

    private List<Note> previous(Note note) {
        return melody.before(note).stream()
                .filter(earlier -> !pauses.between(earlier, note))
                .toList();
    }
}
