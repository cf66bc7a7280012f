package org.fretgloss.checks;

import java.util.stream.Stream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** The frets that the hand plays again and again. */
final class Habits {

    /** How often a fret is played nearby that the hand is used to. */
    private static final int HABIT = 2;

    private final Soundings<StringFret> places;

    Habits(Solo solo) {
        this.places = Soundings.of(solo, Note::at);
    }

    /** Whether the fret below or above a note is one of them within two bars. */
    boolean isBesideOne(Note note) {
        return note.at().stream()
                .flatMap(at -> Stream.of(-1, 1).map(way -> new StringFret(at.string(), at.fret() + way)))
                .anyMatch(beside -> places.near(note, beside) >= HABIT);
    }

    /** Whether a note's fret is played nowhere else in the solo, and one beside it again and again. */
    boolean strays(Note note) {
        return note.at().filter(at -> places.inAll(at) == 1).isPresent() && isBesideOne(note);
    }
}
