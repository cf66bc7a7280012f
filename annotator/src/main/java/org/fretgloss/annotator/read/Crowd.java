package org.fretgloss.annotator.read;

import java.util.List;
import java.util.PriorityQueue;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/** Refuses parts in which more notes sound together than on any instrument: comparing each with each would never end. */
final class Crowd {

    private static final int MOST = 200;

    private Crowd() {}

    /** Looks through a solo, whose notes stand in the order of their onsets. */
    static Solo checked(Solo solo) throws ScoreException {
        PriorityQueue<Fraction> ends = new PriorityQueue<>();
        List<Note> notes = solo.notes();
        for (Note note : notes) {
            while (!ends.isEmpty() && ends.element().compareTo(note.onset()) <= 0) {
                ends.remove();
            }
            if (note.end().compareTo(note.onset()) > 0) {
                ends.add(note.end());
            }
            if (ends.size() > MOST) {
                throw new ScoreException("'" + solo.part().name() + "', bar "
                        + note.bar().number() + ": more than " + MOST
                        + " notes sound together, which nobody plays; export the score again, or name another part with"
                        + " --part");
            }
        }
        return solo;
    }
}
