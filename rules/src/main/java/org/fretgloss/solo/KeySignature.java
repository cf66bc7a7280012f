package org.fretgloss.solo;

import java.util.Optional;

/**
 * A key signature as printed, a weak witness for the home of a solo: many exporters write no sharps for every key.
 *
 * @param fifths sharps (positive) or flats (negative)
 * @param mode the mode if the score names one: "major", "minor", "dorian" ...
 */
public record KeySignature(int fifths, Optional<String> mode) {

    public static final KeySignature NONE = new KeySignature(0, Optional.empty());
}
