package org.fretgloss.solo;

import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.time.Fraction;

/**
 * A chord symbol where it stands in the score.
 *
 * @param onset quarter notes from the start of the part
 * @param chord the chord, or none where the symbol ends the one before ("N.C.", or a kind without tones)
 */
public record ChordMark(Fraction onset, Optional<ChordSymbol> chord) {}
