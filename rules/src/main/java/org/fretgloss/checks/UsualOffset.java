package org.fretgloss.checks;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;

/**
 * How far the pitches of a part are written above what their frets sound: 12 for most guitars, 0 for tablature alone. Only
 * where nearly all notes agree can one that does not be called a slip.
 */
final class UsualOffset {

    /** With fewer notes any habit is chance. */
    private static final int ENOUGH_NOTES = 8;

    /** The share of the notes that must agree, in hundredths. */
    private static final int ENOUGH_AGREEMENT = 90;

    private UsualOffset() {}

    /** The part's habit, in semitones; none where its notes are too few or disagree too often. */
    static OptionalInt of(Solo solo) {
        List<Note> notes = solo.notes().stream().filter(UsualOffset::tells).toList();
        Map<Integer, Long> counts = notes.stream()
                .collect(Collectors.groupingBy(note -> note.written().offset(), Collectors.counting()));
        return counts.entrySet().stream()
                .filter(entry -> notes.size() >= ENOUGH_NOTES
                        && 100 * entry.getValue() >= (long) ENOUGH_AGREEMENT * notes.size())
                .mapToInt(Map.Entry::getKey)
                .findFirst();
    }

    /** By how many semitones a note is written off the habit; 0 where it tells nothing. */
    static Function<Note, Integer> strayFrom(Solo solo) {
        OptionalInt usual = of(solo);
        return note -> usual.isPresent() && tells(note) ? stray(note, usual.getAsInt()) : 0;
    }

    /** A bent note may be written where it is fretted or at its peak. */
    private static int stray(Note note, int usual) {
        int stray = note.written().offset() - usual;
        return stray == note.heardMidi() - note.midi() ? 0 : stray;
    }

    /** Dead notes carry any pitch, and a harmonic sounds elsewhere than it is fretted. */
    private static boolean tells(Note note) {
        return note.at().isPresent() && !note.isDead() && !note.has(Technique.HARMONIC);
    }
}
