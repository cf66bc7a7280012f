package org.fretgloss.annotator.read;

import java.util.OptionalInt;
import org.fretgloss.neck.Tuning;

/**
 * A capo, or strings that are all tuned lower, which the score does not mention: every note is written by the same
 * distance above or below its fret, other than an octave. The key signature and the chord symbols are in the key of the
 * written notes, so these say what sounds.
 */
final class TuningShift {

    /** Fewer notes may all be slips. */
    private static final int NOTES_THAT_TELL = 5;

    private static final double NEARLY_ALL = 0.95;

    /** Distances beyond it belong to notes written an octave high. */
    private static final int HIGHEST_CAPO = 7;

    private static final int OCTAVE = 12;

    /** Keys whose signatures name the lowered strings as players do: E♭ A♭ D♭ G♭ B♭ E♭, but C♯ F♯ B E G♯ C♯. */
    private static final int IN_FLATS = -3;

    private static final int IN_SHARPS = 2;

    private TuningShift() {}

    /** The tuning with what the notes show of it. */
    static Tuning shown(Tuning declared, PitchOffsets offsets, Notices notices) {
        OptionalInt unexplained = offsets.unexplained(NOTES_THAT_TELL, NEARLY_ALL);
        if (unexplained.isEmpty()) {
            return declared;
        }
        int shift = unexplained.getAsInt();
        int semitones = shift > HIGHEST_CAPO ? shift - OCTAVE : shift;
        if (semitones > 0 && semitones <= HIGHEST_CAPO) {
            notices.say("the notes are written " + amount(semitones)
                    + " above their frets and the score names no capo, so a capo on fret " + semitones + " is taken");
            return declared.withCapo(semitones);
        }
        if (semitones < 0 && semitones >= -HIGHEST_CAPO) {
            Tuning lowered = lowered(declared, -semitones);
            notices.say("the notes are written " + amount(-semitones)
                    + " below their frets, so the strings are taken to be tuned " + amount(-semitones)
                    + " lower: " + NamedTuning.strings(lowered));
            return lowered;
        }
        return declared;
    }

    /** The tuning with all its strings lower. */
    static Tuning lowered(Tuning tuning, int semitones) {
        int fifths = semitones == 3 || semitones == 5 ? IN_SHARPS : IN_FLATS;
        return new Tuning(
                tuning.strings().stream()
                        .map(open -> Spelling.inKey(open.midi() - semitones, fifths))
                        .toList(),
                tuning.capo());
    }

    private static String amount(int semitones) {
        return semitones == 1 ? "a semitone" : semitones + " semitones";
    }
}
