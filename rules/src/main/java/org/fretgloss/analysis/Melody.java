package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * What the ear follows: the moments of a solo at which a pitch is struck, in order. Notes struck together are one
 * moment; grace notes take no time and dead notes have no pitch, so both are passed over.
 */
public final class Melody {

    private final NavigableMap<Fraction, List<Note>> moments;

    private Melody(NavigableMap<Fraction, List<Note>> moments) {
        this.moments = moments;
    }

    public static Melody of(Solo solo) {
        NavigableMap<Fraction, List<Note>> moments = new TreeMap<>();
        solo.notes().stream()
                .filter(Note::isPitched)
                .forEach(note -> moments.computeIfAbsent(note.onset(), unused -> new ArrayList<>())
                        .add(note));
        moments.replaceAll((onset, notes) -> List.copyOf(notes));
        return new Melody(moments);
    }

    /** The notes of each moment, in order; one note for a single note, several for a double stop or a chord. */
    public Collection<List<Note>> moments() {
        return List.copyOf(moments.values());
    }

    /** The notes struck at the moment of a note; for a grace note the notes it leans on. */
    public List<Note> at(Note note) {
        return moments.getOrDefault(note.onset(), List.of());
    }

    /** The notes of the moment after a note; none after the last. */
    public List<Note> after(Note note) {
        return notesOf(moments.higherEntry(note.onset()));
    }

    /** The notes of the moment before a note; none before the first. */
    public List<Note> before(Note note) {
        return notesOf(moments.lowerEntry(note.onset()));
    }

    private static List<Note> notesOf(Map.@Nullable Entry<Fraction, List<Note>> moment) {
        return moment == null ? List.of() : moment.getValue();
    }
}
