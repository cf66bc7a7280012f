package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;

/**
 * Bars of chords that repeat to the end of a solo.
 *
 * @param name a form's name ("twelve-bar"), or "given" for bars that the user wrote out
 * @param key the form's key; none for bars that the user wrote out
 * @param bars the chords of each bar, which share it evenly; an empty place is a bar's share without chord
 */
public record Progression(String name, Optional<PitchClass> key, List<List<Optional<ChordSymbol>>> bars) {

    public Progression {
        bars = bars.stream().map(List::copyOf).toList();
        if (bars.isEmpty() || bars.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a progression has bars, and every bar has chords");
        }
    }
}
