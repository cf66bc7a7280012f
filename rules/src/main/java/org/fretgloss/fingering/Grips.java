package org.fretgloss.fingering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Note;

/** Every way to take the notes of an onset, each on a string of its own; of very many the handiest. */
final class Grips {

    /** Frets from the lowest to the highest finger that a hand can hold down together. */
    private static final int WIDEST = 5;

    /** Grips that are looked at for one onset; a six-string guitar rarely has a fourth of them. */
    private static final int MOST = 64;

    /** Steps of the search for one onset: a twelve-string chord could go on for ever. */
    private static final int MOST_STEPS = 5_000;

    private final List<List<StringFret>> places;
    private final int[] strings;
    private final int[] frets;
    private final boolean[] taken;
    private final int widest;
    private final List<Grip> found = new ArrayList<>();
    private int steps;

    private Grips(List<List<StringFret>> places, int allStrings, int widest) {
        this.places = places;
        this.strings = new int[places.size()];
        this.frets = new int[places.size()];
        this.taken = new boolean[allStrings + 1];
        this.widest = widest;
    }

    /**
     * At least one; where not all notes can be played together, one that leaves some out.
     *
     * @param allStrings the highest number of a string, in the tuning or in the score
     */
    static List<Grip> of(Onset onset, Tuning tuning, int allStrings) {
        List<List<StringFret>> places =
                onset.notes().stream().map(note -> placesOf(note, tuning)).toList();
        List<Grip> grips = new Grips(places, allStrings, WIDEST).all();
        if (grips.isEmpty()) {
            grips = new Grips(places, allStrings, Integer.MAX_VALUE).all();
        }
        return grips.isEmpty() ? List.of(new Grips(places, allStrings, Integer.MAX_VALUE).some()) : grips;
    }

    /** Where the score has the note; else wherever it can be played. A dead note's pitch means nothing. */
    private static List<StringFret> placesOf(Note note, Tuning tuning) {
        return note.at().map(List::of).orElseGet(() -> note.isDead() ? List.of() : Neck.placesOf(note.midi(), tuning));
    }

    private List<Grip> all() {
        if (places.stream().filter(place -> !place.isEmpty()).count() < taken.length) {
            take(0, Integer.MAX_VALUE, 0);
        }
        found.sort(Comparator.comparingInt(Grip::span).thenComparingInt(Grip::highest));
        return found.size() > MOST ? found.subList(0, MOST) : found;
    }

    private void take(int note, int lowest, int highest) {
        if (++steps > MOST_STEPS) {
            return;
        }
        if (note == places.size()) {
            found.add(new Grip(strings, frets));
            return;
        }
        if (places.get(note).isEmpty()) {
            strings[note] = Grip.NO_STRING;
            take(note + 1, lowest, highest);
        }
        for (StringFret at : places.get(note)) {
            int low = at.isOpen() ? lowest : Math.min(lowest, at.fret());
            int high = Math.max(highest, at.fret());
            if (!taken[at.string()] && (high == 0 || high - low <= widest)) {
                taken[at.string()] = true;
                strings[note] = at.string();
                frets[note] = at.fret();
                take(note + 1, low, high);
                taken[at.string()] = false;
            }
        }
    }

    /** From the highest note down each takes the first string that is free; written places come before all. */
    private Grip some() {
        for (int pass = 0; pass < 2; pass++) {
            for (int note = places.size() - 1; note >= 0; note--) {
                boolean written = places.get(note).size() == 1;
                if (written == (pass == 0)) {
                    seat(note);
                }
            }
        }
        return new Grip(strings, frets);
    }

    private void seat(int note) {
        for (StringFret at : places.get(note)) {
            if (!taken[at.string()]) {
                taken[at.string()] = true;
                strings[note] = at.string();
                frets[note] = at.fret();
                return;
            }
        }
    }
}
