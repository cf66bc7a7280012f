package org.fretgloss.pitch;

import java.util.List;

/**
 * The way from one spelled pitch to another. Letters and semitones are counted apart: from A up to C♯ is a major third,
 * up to D♭, which sounds the same, a diminished fourth.
 *
 * @param letters how many letters up, 2 for a third; negative downward
 * @param semitones how many semitones up; negative downward
 */
public record Interval(int letters, int semitones) {

    private static final List<String> NUMBERS =
            List.of("unison", "second", "third", "fourth", "fifth", "sixth", "seventh", "octave");

    /** Letters above the lower note at which an interval is perfect where others are major. */
    private static final List<Integer> PERFECT = List.of(0, 3, 4, 7);

    public static Interval between(Pitch from, Pitch to) {
        return new Interval(to.letters() - from.letters(), to.midi() - from.midi());
    }

    /** The same way back. */
    public Interval reversed() {
        return new Interval(-letters, -semitones);
    }

    /** The name in words, whichever the direction: "minor third", "augmented fourth", "compound major third". */
    @Override
    public String toString() {
        if (letters < 0 || (letters == 0 && semitones < 0)) {
            return reversed().toString();
        }
        if (letters > 7) {
            return "compound "
                    + new Interval(letters - 7, semitones - 12).toString().replace("compound ", "");
        }
        int alteration = semitones - new Degree(letters + 1, 0).semitones();
        return quality(alteration) + " " + NUMBERS.get(letters);
    }

    private String quality(int alteration) {
        boolean perfect = PERFECT.contains(letters);
        if (alteration == 0) {
            return perfect ? "perfect" : "major";
        }
        if (alteration == -1 && !perfect) {
            return "minor";
        }
        int beyond = alteration > 0 || perfect ? Math.abs(alteration) : -alteration - 1;
        return "doubly ".repeat(beyond - 1) + (alteration > 0 ? "augmented" : "diminished");
    }
}
