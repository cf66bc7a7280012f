package org.fretgloss.neck;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.fretgloss.pitch.Pitch;

/**
 * The open strings of an instrument, and the capo.
 *
 * @param strings sounding pitch of each open string without capo; the first is string 1, the thinnest on a guitar
 * @param capo the fret the capo lies on, 0 for none; frets are counted from it
 */
public record Tuning(List<Pitch> strings, int capo) {

    /** Strings 1 to 6 of a guitar in standard tuning: E4 B3 G3 D3 A2 E2 (common practice; MIDI 64 59 55 50 45 40). */
    public static final Tuning STANDARD = of("E4 B3 G3 D3 A2 E2");

    /** Semitones between most neighbours among a guitar's strings. */
    static final int FOURTH = 5;

    private static final int MAJOR_THIRD = 4;

    /** With fewer strings beside the lowest nothing tells a retuned string from another tuning. */
    private static final int STRINGS_THAT_TELL = 3;

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there is no string, or the capo is negative
     */
    public Tuning {
        strings = List.copyOf(strings);
        if (strings.isEmpty()) {
            throw new IllegalArgumentException("a tuning has strings");
        }
        if (capo < 0) {
            throw new IllegalArgumentException("no capo on fret " + capo);
        }
    }

    /** From pitches, string 1 first, parted by blanks: {@code of("E4 B3 G3 D3 A2 D2")}. */
    public static Tuning of(String strings) {
        return new Tuning(List.of(strings.split(" ")).stream().map(Pitch::parse).toList(), 0);
    }

    public Tuning withCapo(int fret) {
        return new Tuning(strings, fret);
    }

    public int size() {
        return strings.size();
    }

    public boolean hasString(int string) {
        return string >= 1 && string <= strings.size();
    }

    /** MIDI number of a string played open, capo included. */
    public int openMidi(int string) {
        return strings.get(string - 1).midi() + capo;
    }

    /** MIDI number that sounds at a string and fret. */
    public int midi(StringFret at) {
        return openMidi(at.string()) + at.fret();
    }

    /**
     * The last string, where it alone is retuned: the others stand in fourths, with a guitar's major third below string
     * 2 or without (a bass), and only the last does not stand a fourth below its neighbour.
     */
    OptionalInt retunedString() {
        int last = size();
        boolean othersAsUsual =
                last > STRINGS_THAT_TELL && IntStream.range(1, last - 1).allMatch(this::standsAsUsual);
        int lowest = othersAsUsual ? above(last - 1) : FOURTH;
        return lowest > 0 && lowest != FOURTH ? OptionalInt.of(last) : OptionalInt.empty();
    }

    private boolean standsAsUsual(int string) {
        return above(string) == FOURTH || (string == 2 && above(string) == MAJOR_THIRD);
    }

    /** Semitones by which a string stands above the next one. */
    private int above(int string) {
        return openMidi(string) - openMidi(string + 1);
    }
}
