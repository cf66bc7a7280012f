package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * A pitch that the ear takes a note for. A released bend is heard as its peak and as what it is let down to, half its
 * duration each; grace notes and dead notes give no pitch.
 *
 * @param midi MIDI number
 * @param start quarter notes from the start of the part
 * @param duration quarter notes
 * @param bent whether a bend reaches it
 */
public record Heard(int midi, Fraction start, Fraction duration, boolean bent) {

    private static final Fraction HALF = Fraction.of(1, 2);

    /** The pitches a note is heard as, in order. */
    public static List<Heard> of(Note note) {
        if (note.grace() || note.isDead()) {
            return List.of();
        }
        if (note.endMidi() == note.heardMidi()) {
            return List.of(new Heard(note.heardMidi(), note.onset(), note.duration(), note.isBentAway()));
        }
        Fraction half = note.duration().times(HALF);
        return List.of(
                new Heard(note.heardMidi(), note.onset(), half, true),
                new Heard(note.endMidi(), note.onset().plus(half), half, note.endMidi() != note.midi()));
    }

    public Fraction end() {
        return start.plus(duration);
    }

    public int chroma() {
        return Math.floorMod(midi, 12);
    }
}
