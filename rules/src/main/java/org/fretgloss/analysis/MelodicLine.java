package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Notes as one line: moments at which something is struck, each with the time to the next and its highest pitch. Grace
 * notes belong to the moment that they lean on; a dead note has its place in the rhythm and keeps the pitch before it.
 *
 * @param moments in order
 */
record MelodicLine(List<Moment> moments) {

    /**
     * Notes struck together.
     *
     * @param note place of the first of them, a grace note included, among the notes of the line
     * @param onset in bars
     * @param end where everything struck so far has stopped sounding, in bars
     * @param beat length of a beat, in bars
     * @param length time to the next moment; of the last moment, how long it sounds; in quarter notes
     * @param pitch MIDI number of the highest heard pitch
     */
    record Moment(int note, double onset, double end, double beat, Fraction length, int pitch) {

        /** An octave of time is a doubling. */
        double octavesOfLength() {
            return Math.log(Math.max(length.toDouble(), SHORTEST)) / Math.log(2);
        }
    }

    /** Lengths below this, in quarter notes, are ornaments whose exact length says nothing. */
    private static final double SHORTEST = 1.0 / 32;

    MelodicLine {
        moments = List.copyOf(moments);
    }

    /** The line of at least one note, in sounding order. */
    static MelodicLine of(List<Note> notes, BarCount bars) {
        List<Moment> moments = new ArrayList<>();
        double end = 0;
        int pitch = notes.get(0).heardMidi();
        int from = 0;
        while (from < notes.size()) {
            int to = endOfMoment(notes, from);
            List<Note> together = notes.subList(from, to);
            pitch = highest(together).orElse(pitch);
            end = Math.max(end, together.stream().mapToDouble(bars::end).max().orElse(end));
            Note first = notes.get(from);
            moments.add(new Moment(
                    from,
                    bars.onset(first),
                    end,
                    1.0 / first.bar().meter().beats(),
                    to < notes.size() ? notes.get(to).onset().minus(first.onset()) : longest(together),
                    pitch));
            from = to;
        }
        return new MelodicLine(moments);
    }

    private static int endOfMoment(List<Note> notes, int from) {
        int to = from + 1;
        while (to < notes.size() && notes.get(to).onset().equals(notes.get(from).onset())) {
            to++;
        }
        return to;
    }

    private static OptionalInt highest(List<Note> together) {
        return together.stream()
                .filter(Note::isPitched)
                .mapToInt(Note::heardMidi)
                .max();
    }

    private static Fraction longest(List<Note> together) {
        return together.stream().map(Note::duration).reduce(Fraction.ZERO, Fraction::max);
    }

    int size() {
        return moments.size();
    }

    Moment at(int moment) {
        return moments.get(moment);
    }

    /** Semitones from a moment to the next. */
    int step(int moment) {
        return at(moment + 1).pitch() - at(moment).pitch();
    }

    /** From the onset of a moment to that of another, or to the end of the line; in bars. */
    double bars(int from, int to) {
        return (to < size() ? at(to).onset() : at(size() - 1).end()) - at(from).onset();
    }
}
