package org.fretgloss.analysis;

import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.time.Fraction;

/**
 * A stretch under one chord, or under none.
 *
 * @param start quarter notes from the start of the part
 * @param end where the next stretch starts
 * @param chord the chord that sounds, or none
 */
public record ChordSpan(Fraction start, Fraction end, Optional<ChordSymbol> chord) {}
