package org.fretgloss.checks;

import java.util.stream.Stream;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;

/** Which notes tell where the fretting hand is. */
final class Fretted {

    private Fretted() {}

    /**
     * Whether a finger stops the string there and stays: neither open, dead, grace nor a harmonic, and on no slide that
     * comes from or goes to nowhere.
     */
    static boolean isPlain(Note note) {
        return note.isPitched()
                && note.at().filter(at -> !at.isOpen()).isPresent()
                && Stream.of(Technique.HARMONIC, Technique.SLIDE_IN, Technique.SLIDE_OUT)
                        .noneMatch(note::has);
    }
}
