package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.neck.Box;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/**
 * The boxes a solo moves through.
 *
 * @param spans in order; together they hold every note from the first fretted one on. None where there are no frets
 */
public record BoxPath(List<BoxSpan> spans) {

    public BoxPath {
        spans = List.copyOf(spans);
    }

    /** The box in force at a note. */
    public Optional<Box> boxOf(Note note) {
        int low = 0;
        int high = spans.size() - 1;
        while (low <= high) {
            int middle = (low + high) / 2;
            BoxSpan span = spans.get(middle);
            if (note.index() < span.first().index()) {
                high = middle - 1;
            } else if (note.index() > span.last().index()) {
                low = middle + 1;
            } else {
                return Optional.of(span.box());
            }
        }
        return Optional.empty();
    }

    /**
     * How many frets the hand reaches for a note outside the box in force: below negative, above positive, otherwise 0. A
     * dead note has no pitch to reach for, and a tapped one is the other hand's.
     */
    public int reachOf(Note note) {
        if (note.isDead() || note.attack() == Attack.TAPPED) {
            return 0;
        }
        return note.at().flatMap(at -> boxOf(note).map(box -> box.reach(at))).orElse(0);
    }
}
