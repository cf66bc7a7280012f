package org.fretgloss.solo;

import java.util.ArrayList;
import java.util.List;

/** Which notes of a solo sound at the same time, in whichever voice they are written; grace notes and dead notes apart. */
public final class SoundingTogether {

    private final List<List<Note>> others;

    private SoundingTogether(List<List<Note>> others) {
        this.others = others;
    }

    /** Goes through the solo once, keeping the notes that still ring. */
    public static SoundingTogether of(Solo solo) {
        List<List<Note>> others = new ArrayList<>();
        List<Note> ringing = new ArrayList<>();
        for (Note note : solo.notes()) {
            others.add(new ArrayList<>());
            if (!note.isPitched()) {
                continue;
            }
            ringing.removeIf(earlier -> !earlier.overlaps(note));
            for (Note earlier : ringing) {
                others.get(earlier.index()).add(note);
                others.get(note.index()).add(earlier);
            }
            ringing.add(note);
        }
        return new SoundingTogether(others.stream().map(List::copyOf).toList());
    }

    /** The notes that sound together with a note at some moment, in sounding order. */
    public List<Note> with(Note note) {
        return others.get(note.index());
    }
}
