package org.fretgloss.solo;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.time.Fraction;

/**
 * A transcribed solo, immutable.
 *
 * @param title the work's or movement's title, which may be empty
 * @param part the part of the score it was read from
 * @param tuning strings and capo
 * @param tuningIsWritten whether the score says how the strings are tuned
 * @param bars at least one, in order
 * @param notes in {@linkplain Note#SOUNDING_ORDER sounding order}, each at the place its index says
 * @param chords chord symbols in order of onset, from whichever part they stand in
 * @param tempos in order of onset
 */
public record Solo(
        String title,
        Part part,
        Tuning tuning,
        boolean tuningIsWritten,
        List<Bar> bars,
        List<Note> notes,
        List<ChordMark> chords,
        List<Tempo> tempos) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there is no bar, or a note does not stand where its index says
     */
    public Solo {
        bars = List.copyOf(bars);
        notes = List.copyOf(notes);
        chords = List.copyOf(chords);
        tempos = List.copyOf(tempos);
        if (bars.isEmpty()) {
            throw new IllegalArgumentException("a solo has bars");
        }
        for (int i = 0; i < notes.size(); i++) {
            if (notes.get(i).index() != i) {
                throw new IllegalArgumentException(
                        "note " + i + " says it is note " + notes.get(i).index());
            }
        }
    }

    /** Whether any note tells its string and fret. */
    public boolean hasFrets() {
        return notes.stream().anyMatch(note -> note.at().isPresent());
    }

    /**
     * The same solo with string and fret for some notes that lack them; notes struck together fall into sounding order.
     *
     * @param places by the notes' ordinals
     */
    public Solo withPlaces(Map<Integer, StringFret> places) {
        List<Note> placed = notes.stream()
                .map(note -> note.at().isPresent() ? note : note.at(Optional.ofNullable(places.get(note.ordinal()))))
                .sorted(Note.SOUNDING_ORDER)
                .toList();
        return new Solo(
                title,
                part,
                tuning,
                tuningIsWritten,
                bars,
                IntStream.range(0, placed.size())
                        .mapToObj(i -> placed.get(i).withIndex(i))
                        .toList(),
                chords,
                tempos);
    }

    /** The note before this one in sounding order. */
    public Optional<Note> before(Note note) {
        return note.index() == 0 ? Optional.empty() : Optional.of(notes.get(note.index() - 1));
    }

    /** The note after this one in sounding order. */
    public Optional<Note> after(Note note) {
        return note.index() + 1 == notes.size() ? Optional.empty() : Optional.of(notes.get(note.index() + 1));
    }

    /** The note that a grace note leans on; any other note is its own. A grace note at the end leans on nothing else. */
    public Note mainOf(Note note) {
        for (int i = note.index(); i < notes.size(); i++) {
            if (!notes.get(i).grace()) {
                return notes.get(i);
            }
        }
        return note;
    }

    /**
     * The bar that a moment falls in; a moment after the end falls in the last.
     *
     * @throws NoSuchElementException if the moment lies before the first bar
     */
    public Bar barAt(Fraction moment) {
        int low = 0;
        int high = bars.size() - 1;
        if (moment.isLessThan(bars.get(0).start())) {
            throw new NoSuchElementException("no bar at " + moment);
        }
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (bars.get(middle).start().isMoreThan(moment)) {
                high = middle - 1;
            } else {
                low = middle;
            }
        }
        return bars.get(low);
    }

    /** The end of the last bar, in quarter notes. */
    public Fraction end() {
        return bars.get(bars.size() - 1).end();
    }
}
