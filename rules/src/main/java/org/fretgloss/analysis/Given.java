package org.fretgloss.analysis;

import java.util.Optional;

/**
 * What the user says about a solo; it wins over what the score says.
 *
 * @param home tonic and scale
 * @param progression chords, written out or by a form's name
 * @param formStart the printed number of the bar in which the progression first begins
 */
public record Given(Optional<HomeScale> home, Optional<Progression> progression, Optional<String> formStart) {

    public static final Given NOTHING = new Given(Optional.empty(), Optional.empty(), Optional.empty());
}
