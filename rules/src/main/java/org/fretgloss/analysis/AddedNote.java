package org.fretgloss.analysis;

import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;

/**
 * A heard note outside the home scale.
 *
 * @param degree against the home tonic
 * @param pitch a natural degree spelled as that degree, an altered one as it is most often written
 * @param count how many notes are heard at it
 * @param bent how many of these a bend reaches
 */
public record AddedNote(Degree degree, PitchClass pitch, int count, int bent) {}
