package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.Pitch;

/**
 * Where a solo is at home.
 *
 * @param scale tonic and scale
 * @param added every heard pitch class outside the scale, in rising order of degree
 * @param confidence 0 to 1; 1 where the user stated it
 * @param runnerUp the next likely home, where there is one
 */
public record Home(HomeScale scale, List<AddedNote> added, double confidence, Optional<HomeScale> runnerUp) {

    public Home {
        added = List.copyOf(added);
    }

    /** A sounding note as this home spells it: an added note as the list of them does, any other by its degree. */
    public Pitch spell(int midi) {
        return added.stream()
                .map(AddedNote::pitch)
                .filter(name -> name.chroma() == Math.floorMod(midi, 12))
                .findFirst()
                .map(name -> Pitch.spelled(midi, name))
                .orElseGet(() -> scale.spell(midi));
    }
}
