package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.audiveris.proxymusic.Numeral;
import org.audiveris.proxymusic.NumeralKey;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.KeySignature;

/**
 * The root that a Roman numeral or a number stands for: the degree of the key in force, or of the key that the numeral
 * brings along. In minor the 6 and 7 are those of natural minor, unless the numeral's own key says harmonic minor, which
 * sharpens the 7, or melodic minor, which sharpens both (W3C, MusicXML 4.0, numeral-mode).
 */
final class Numerals {

    /** The modes on the seven notes of one key signature, each upon its own; major is ionian, minor is aeolian. */
    private static final List<String> MODES =
            List.of("ionian", "dorian", "phrygian", "lydian", "mixolydian", "aeolian", "locrian");

    /** Fifths from the first note of a major scale to each of its notes, in rising order. */
    private static final List<Integer> FIFTHS_OF_MAJOR = List.of(0, 2, 4, -1, 1, 3, 5);

    private Numerals() {}

    /**
     * The root.
     *
     * @param key the signature in force where the numeral stands
     * @return none if the numeral is incomplete, or its degree, key or mode is unknown
     */
    static Optional<PitchClass> root(Numeral numeral, KeySignature key) {
        if (numeral.getNumeralRoot() == null) {
            return Optional.empty();
        }
        int degree = numeral.getNumeralRoot().getValue();
        return degree < 1 || degree > MODES.size()
                ? Optional.empty()
                : keyOf(numeral, key).flatMap(own -> root(numeral, degree, own));
    }

    private static Optional<PitchClass> root(Numeral numeral, int degree, KeySignature key) {
        String mode = key.mode().orElse("major").toLowerCase(Locale.ROOT);
        int alteration = ChordReader.alteration(numeral.getNumeralAlter()) + (isSharpened(degree, mode) ? 1 : 0);
        int first = modeIndex(mode);
        return first < 0
                ? Optional.empty()
                : Optional.of(PitchClass.atFifth(
                        key.fifths() + FIFTHS_OF_MAJOR.get((first + degree - 1) % MODES.size()) + 7 * alteration));
    }

    private static Optional<KeySignature> keyOf(Numeral numeral, KeySignature inForce) {
        NumeralKey own = numeral.getNumeralKey();
        if (own == null) {
            return Optional.of(inForce);
        }
        if (own.getNumeralMode() == null) {
            return Optional.empty();
        }
        return Numbers.whole(own.getNumeralFifths()).stream()
                .filter(fifths -> Math.abs(fifths) <= Signatures.MOST_FIFTHS)
                .mapToObj(fifths -> new KeySignature(
                        fifths, Optional.of(own.getNumeralMode().value())))
                .findFirst();
    }

    private static boolean isSharpened(int degree, String mode) {
        return switch (mode) {
            case "harmonic minor" -> degree == 7;
            case "melodic minor" -> degree >= 6;
            default -> false;
        };
    }

    private static int modeIndex(String mode) {
        return switch (mode) {
            case "major" -> 0;
            case "minor", "natural minor", "harmonic minor", "melodic minor" -> MODES.indexOf("aeolian");
            default -> MODES.indexOf(mode);
        };
    }
}
