package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Scale;

/**
 * The two modes a solo can have on its tonic: the pentatonic at the heart of each, the scales that its chords come from,
 * and how much a note on each degree speaks for a tonic of that mode.
 */
enum Mode {
    MINOR(Scale.MINOR_PENTATONIC, List.of(Scale.NATURAL_MINOR, Scale.DORIAN, Scale.HARMONIC_MINOR)),
    MAJOR(Scale.MAJOR_PENTATONIC, List.of(Scale.MAJOR, Scale.MIXOLYDIAN));

    private final Scale pentatonic;
    private final List<Scale> chordScales;

    Mode(Scale pentatonic, List<Scale> chordScales) {
        this.pentatonic = pentatonic;
        this.chordScales = chordScales;
    }

    Scale pentatonic() {
        return pentatonic;
    }

    Mode other() {
        return this == MINOR ? MAJOR : MINOR;
    }

    /** Whether a chord belongs to one of the mode's usual scales on a tonic. */
    boolean holds(ChordSymbol chord, int tonic) {
        return chordScales.stream()
                .anyMatch(scale -> chord.tones().stream()
                        .allMatch(tone -> scale.contains(chord.root().chroma() + tone.chroma() - tonic)));
    }
}
