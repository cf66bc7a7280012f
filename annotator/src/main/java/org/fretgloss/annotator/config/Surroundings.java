package org.fretgloss.annotator.config;

import java.util.List;
import org.fretgloss.annotator.file.ShortDigest;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** The notes around one note, as far as they bear on what is doubted about it. */
final class Surroundings {

    /** Notes on each side. A change further off leaves a decision standing. */
    private static final int REACH = 2;

    private Surroundings() {}

    /** Changes when one of the notes does; not when bars are put in before them, or their numbers change. */
    static String digest(Solo solo, Note note) {
        List<Note> around = solo.notes()
                .subList(
                        Math.max(0, note.index() - REACH), Math.min(solo.notes().size(), note.index() + REACH + 1));
        return ShortDigest.of(around.stream().map(other -> line(other, note)));
    }

    private static String line(Note note, Note middle) {
        return String.join(
                " ",
                note.onset().minus(middle.onset()).toString(),
                note.duration().toString(),
                note.pitch().toString(),
                note.at().map(StringFret::toString).orElse("-"),
                note.bend().map(Bend::heights).map(List::toString).orElse("-"),
                note.attack().toString());
    }
}
