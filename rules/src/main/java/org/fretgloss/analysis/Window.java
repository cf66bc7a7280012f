package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Some bars in a row, measured for how much happens in them. A note belongs to the bar that it begins in.
 *
 * @param bars at least one
 * @param notes all notes that begin in them, in sounding order
 */
record Window(List<Bar> bars, List<Note> notes) {

    Window {
        bars = List.copyOf(bars);
        notes = List.copyOf(notes);
    }

    /** Every window of so many bars to so many, by its first bar, the shorter before the longer. */
    static List<Window> all(Solo solo, List<Bar> bars, int shortest, int longest) {
        Map<Bar, List<Note>> notesOf = solo.notes().stream().collect(Collectors.groupingBy(Note::bar));
        List<Window> windows = new ArrayList<>();
        for (int first = 0; first < bars.size(); first++) {
            for (int size = shortest; size <= longest && first + size <= bars.size(); size++) {
                List<Bar> some = bars.subList(first, first + size);
                windows.add(new Window(
                        some,
                        some.stream()
                                .flatMap(bar -> notesOf.getOrDefault(bar, List.of()).stream())
                                .toList()));
            }
        }
        return windows;
    }

    /** Notes struck per beat: dead notes are struck, grace notes are part of their main notes. */
    double density() {
        long struck = notes.stream().filter(note -> !note.grace()).count();
        Fraction beats = bars.stream()
                .map(bar -> bar.length().dividedBy(bar.meter().beatLength()))
                .reduce(Fraction.ZERO, Fraction::plus);
        return Fraction.of(struck).dividedBy(beats).toDouble();
    }

    /** Whether any note in it has a pitch of its own: dead notes and grace notes have none. */
    boolean hasPitches() {
        return !pitched().isEmpty();
    }

    /** Mean heard pitch, as a MIDI number. */
    double register() {
        return mean(note -> Fraction.of(note.heardMidi()));
    }

    /** Mean width of bends over all notes with a pitch, in semitones; an unbent note counts 0. */
    double bend() {
        return mean(note -> note.bend().map(Bend::width).orElse(Fraction.ZERO));
    }

    private double mean(Function<Note, Fraction> measure) {
        List<Note> pitched = pitched();
        return pitched.stream()
                .map(measure)
                .reduce(Fraction.ZERO, Fraction::plus)
                .dividedBy(Fraction.of(Math.max(1, pitched.size())))
                .toDouble();
    }

    private List<Note> pitched() {
        return notes.stream().filter(note -> !note.grace() && !note.isDead()).toList();
    }
}
