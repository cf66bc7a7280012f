package org.fretgloss.annotator.generated;

import java.util.List;

/**
 * What sounds on a string, and how much above it is written.
 *
 * @param open the open strings as MIDI numbers, string 1 first
 * @param written semitones from what sounds to what is written
 */
record Guitar(List<Integer> open, int capo, int written) {

    private static final List<Integer> STANDARD = List.of(64, 59, 55, 50, 45, 40);

    /** Lowest string a tone down, a whole tone lower, an open chord, seven strings. */
    private static final List<List<Integer>> OTHERS = List.of(
            List.of(64, 59, 55, 50, 45, 38),
            List.of(62, 57, 53, 48, 43, 38),
            List.of(62, 59, 55, 50, 43, 38),
            List.of(64, 59, 55, 50, 45, 40, 35));

    private static final String[] STEPS = {"C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"};

    /** A note name as MusicXML spells it. */
    record Name(String step, boolean isSharp, int octave) {}

    static Guitar of(Dice dice) {
        return new Guitar(
                dice.has(Feature.TUNING) ? dice.oneOf(OTHERS) : STANDARD,
                dice.has(Feature.CAPO) ? 1 + dice.below(4) : 0,
                dice.mayHave(Feature.TRANSPOSITION) || dice.mayHave(Feature.OCTAVE_CLEF) ? 12 : 0);
    }

    boolean isPlain() {
        return open.equals(STANDARD) && capo == 0;
    }

    Name written(Tone tone) {
        return name(open.get(tone.string() - 1) + capo + tone.fret() + written);
    }

    Name openString(int string) {
        return name(open.get(string - 1));
    }

    private static Name name(int midi) {
        String step = STEPS[midi % 12];
        return new Name(step.substring(0, 1), step.length() > 1, midi / 12 - 1);
    }
}
