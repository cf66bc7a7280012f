package org.fretgloss.marks;

import java.util.List;
import java.util.Locale;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;

/** What guitarists call a bend by its course and by what sounds beside it. */
enum BendKind {
    BEND,
    BEND_RELEASE,
    PRE_BEND,
    PRE_BEND_RELEASE,
    /** Bent, let down and bent again on one stroke. */
    REPEATED,
    /** Sounding together with the same pitch on another string. */
    UNISON,
    /** Sounding on while other notes are struck over it. */
    HELD,
    /** Less than a semitone: heard as the fretted pitch. */
    CURL;

    /**
     * Names a bend. What sounds beside it tells more about how to play it than its course, so that goes first.
     *
     * @param others the notes that sound together with the bent one
     */
    static BendKind of(Note note, Bend bend, List<Note> others) {
        List<Note> beside =
                others.stream().filter(other -> !other.sharesStringWith(note)).toList();
        if (bend.isCurl()) {
            return CURL;
        }
        if (beside.stream().anyMatch(other -> other.heardMidi() == note.heardMidi())) {
            return UNISON;
        }
        if (beside.stream().anyMatch(other -> other.onset().isMoreThan(note.onset()))) {
            return HELD;
        }
        return byCourse(bend);
    }

    private static BendKind byCourse(Bend bend) {
        if (bend.isRepeated()) {
            return REPEATED;
        }
        if (bend.isPreBend()) {
            return bend.isReleased() ? PRE_BEND_RELEASE : PRE_BEND;
        }
        return bend.isReleased() ? BEND_RELEASE : BEND;
    }

    /** "pre-bend-release". */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
