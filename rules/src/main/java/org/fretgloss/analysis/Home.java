package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;

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
}
