package org.fretgloss.neck;

import java.util.List;
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
}
