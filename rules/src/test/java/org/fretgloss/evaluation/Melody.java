package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Part;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Written;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/** A solo made of nothing but onsets, durations and pitches, as collections of melodies give them. */
final class Melody {

    /** Collections print thirds as 0.333333; every fraction that they mean is a whole number of these parts. */
    private static final long PARTS_OF_A_QUARTER = 20_160;

    private static final int FLAGS = 5;

    private static final Bend FULL = new Bend(List.of(Fraction.ZERO, Fraction.of(2)));

    private Melody() {}

    /**
     * Lays notes out in bars of a meter, the first beginning at 0. No signature, chords or frets.
     *
     * @param notes each an array that begins with onset, duration (quarter notes) and MIDI number; flags may stand in
     *     the sixth place, of which g is a grace note and b a full bend
     */
    static Solo of(JsonArray notes, Meter meter) {
        List<Bar> bars = bars(notes, meter);
        List<Note> read = new ArrayList<>();
        for (JsonElement element : notes) {
            JsonArray note = element.getAsJsonArray();
            Fraction onset = exact(note.get(0));
            String flags = note.size() > FLAGS ? note.get(FLAGS).getAsString() : "";
            read.add(note(read.size(), onset, exact(note.get(1)), note.get(2).getAsInt(), barAt(bars, onset), flags));
        }
        List<Note> sorted = read.stream().sorted(Note.SOUNDING_ORDER).toList();
        List<Note> indexed = new ArrayList<>();
        sorted.forEach(note -> indexed.add(note.withIndex(indexed.size())));
        return new Solo("", new Part("P1", "Melody"), Tuning.STANDARD, true, bars, indexed, List.of(), List.of());
    }

    static Fraction exact(JsonElement quarters) {
        return Fraction.of(Math.round(quarters.getAsDouble() * PARTS_OF_A_QUARTER), PARTS_OF_A_QUARTER);
    }

    private static List<Bar> bars(JsonArray notes, Meter meter) {
        Fraction end = Fraction.ZERO;
        for (JsonElement element : notes) {
            JsonArray note = element.getAsJsonArray();
            Fraction noteEnd = exact(note.get(0)).plus(exact(note.get(1)));
            end = noteEnd.isMoreThan(end) ? noteEnd : end;
        }
        List<Bar> bars = new ArrayList<>();
        Fraction start = Fraction.ZERO;
        do {
            Fraction length = meter.barLength();
            bars.add(new Bar(
                    bars.size(),
                    Integer.toString(bars.size() + 1),
                    start,
                    length,
                    length,
                    Fraction.ZERO,
                    meter,
                    KeySignature.NONE,
                    false,
                    false,
                    false));
            start = start.plus(length);
        } while (start.isLessThan(end));
        return bars;
    }

    private static Bar barAt(List<Bar> bars, Fraction onset) {
        long place = onset.dividedBy(bars.get(0).length()).floor();
        return bars.get((int) Math.min(place, bars.size() - 1L));
    }

    private static Note note(int index, Fraction onset, Fraction duration, int midi, Bar bar, String flags) {
        Pitch pitch = Pitch.ofMidi(midi);
        boolean grace = flags.contains("g");
        return new Note(
                index,
                index + 1,
                bar,
                onset,
                grace ? Fraction.ZERO : duration,
                pitch,
                Optional.empty(),
                flags.contains("b") ? Optional.of(FULL) : Optional.empty(),
                Attack.PICKED,
                Set.of(),
                grace,
                "1",
                new Written(pitch, 0, List.of(index + 1), false));
    }
}
