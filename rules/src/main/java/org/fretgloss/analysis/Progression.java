package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.UnknownNameException;

/**
 * Bars of chords that repeat to the end of a solo.
 *
 * @param name a form's name ("twelve-bar"), or "given" for bars that the user wrote out
 * @param key the form's key; none for bars that the user wrote out
 * @param bars the chords of each bar, which share it evenly; an empty place is a bar's share without chord
 */
public record Progression(String name, Optional<PitchClass> key, List<List<Optional<ChordSymbol>>> bars) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if there is no bar, or a bar without a place for a chord
     */
    public Progression {
        bars = bars.stream().map(List::copyOf).toList();
        if (bars.isEmpty() || bars.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a progression has bars, and every bar has chords");
        }
    }

    /**
     * Reads bars of chord names: "A7 | D7 | A7 | %". Bar lines part the bars, blanks the chords of a bar; {@code %}
     * repeats the bar before and {@code N.C.} is no chord.
     *
     * @throws IllegalArgumentException if a bar is empty or holds what is no chord; the message names bar and chord
     */
    public static Progression parse(String chart) {
        return new Progression("given", Optional.empty(), ChordChart.parse(chart));
    }

    /**
     * A named blues form in a key.
     *
     * @throws UnknownNameException if there is no such form
     */
    public static Progression form(String name, PitchClass key) {
        return BluesForm.named(name).in(key);
    }
}
