package org.fretgloss.marks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Melody;
import org.fretgloss.marks.SemitoneMove.By;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;

/**
 * Finds where one pitch leads directly to the pitch a semitone above: inside a bend, from a grace note to its main
 * note, or from one moment to the next without silence between. In double stops each note may lead to each note of the
 * next moment.
 */
final class SemitoneMoves {

    private final Solo solo;
    private final Melody melody;

    private SemitoneMoves(Solo solo) {
        this.solo = solo;
        this.melody = Melody.of(solo);
    }

    /** In sounding order, at most one from each note; a bend's own move goes before the way to the next note. */
    static Stream<SemitoneMove> of(Solo solo) {
        SemitoneMoves moves = new SemitoneMoves(solo);
        return solo.notes().stream().filter(note -> !note.isDead()).flatMap(note -> moves.from(note).stream());
    }

    private Optional<SemitoneMove> from(Note note) {
        if (isBentBySemitone(note)) {
            return Optional.of(new SemitoneMove(note, note, By.BEND));
        }
        return reachedFrom(note).stream()
                .filter(next -> isStruckAbove(note, next) && !note.end().isLessThan(next.onset()))
                .findFirst()
                .map(next -> new SemitoneMove(note, next, by(note, next)));
    }

    private static boolean isBentBySemitone(Note note) {
        return !note.has(Technique.WITH_BAR)
                && note.heardMidi() == note.midi() + 1
                && note.bend().map(Bend::risesFromFret).orElse(false);
    }

    private List<Note> reachedFrom(Note note) {
        if (note.grace()) {
            return isLastGrace(note) ? melody.at(note) : List.of();
        }
        List<Note> next = melody.after(note);
        return next.isEmpty() || hasGraceNote(next.get(0)) ? List.of() : next;
    }

    /** Whether no further grace note comes between it and its main note on the same string. */
    private boolean isLastGrace(Note grace) {
        for (Note next : solo.notes().subList(grace.index() + 1, solo.notes().size())) {
            if (!next.grace() || !next.onset().equals(grace.onset())) {
                return true;
            }
            if (next.at().isEmpty() || grace.at().isEmpty() || next.sharesStringWith(grace)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a grace note leans on what is struck at the moment of a note. */
    private boolean hasGraceNote(Note note) {
        for (int i = note.index() - 1; i >= 0 && solo.notes().get(i).onset().equals(note.onset()); i--) {
            if (solo.notes().get(i).grace()) {
                return true;
            }
        }
        return false;
    }

    /** Whether the next note starts a semitone above where this one ends, and is heard there. */
    private static boolean isStruckAbove(Note note, Note next) {
        return next.startMidi() == note.endMidi() + 1 && next.heardMidi() == next.startMidi();
    }

    private static By by(Note first, Note last) {
        return switch (last.attack()) {
            case HAMMERED_ON -> By.HAMMER_ON;
            case SLID -> By.SLIDE;
            case PICKED, PULLED_OFF, TAPPED -> first.grace() ? By.GRACE : By.STRUCK;
        };
    }
}
