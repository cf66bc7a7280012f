package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Finds where a solo builds to: the two to four bars that stand out most among all such windows.
 *
 * <p>The solo's bars are those from its first note to its last end, without a pick-up; under eight of them there is no
 * climax. For each measure of a {@link Window} its distance from the mean of all windows is taken, in population
 * standard deviations, and the largest sum wins: the earlier window where two are equal, then the shorter. A window
 * without pitches cannot win; its density alone counts for the mean.
 */
public final class Build {

    private static final int FEWEST_BARS = 8;
    private static final int SHORTEST = 2;
    private static final int LONGEST = 4;

    private Build() {}

    /** The climax; none in a solo under eight bars, or one of which no window stands out. */
    public static Optional<Climax> climax(Solo solo) {
        List<Bar> bars = barsPlayed(solo);
        if (bars.size() < FEWEST_BARS) {
            return Optional.empty();
        }
        List<Window> windows = Window.all(solo, bars, SHORTEST, LONGEST);
        List<Window> pitched = windows.stream().filter(Window::hasPitches).toList();
        Spread density = spread(windows, Window::density);
        Spread register = spread(pitched, Window::register);
        Spread bend = spread(pitched, Window::bend);
        return pitched.stream()
                .map(window -> climax(
                        window,
                        density.standing(window.density()),
                        register.standing(window.register()),
                        bend.standing(window.bend())))
                .reduce((best, next) -> sum(next) > sum(best) ? next : best)
                .filter(climax -> sum(climax) > 0);
    }

    private static List<Bar> barsPlayed(Solo solo) {
        if (solo.notes().isEmpty()) {
            return List.of();
        }
        Fraction start = solo.notes().get(0).onset();
        Fraction end = solo.notes().stream().map(Note::end).reduce(start, Fraction::max);
        return solo.bars().stream()
                .filter(bar -> !bar.isPickUp() && bar.length().isPositive())
                .filter(bar -> bar.end().isMoreThan(start) && bar.start().isLessThan(end))
                .toList();
    }

    private static Spread spread(List<Window> windows, ToDoubleFunction<Window> measure) {
        return Spread.of(windows.stream().map(measure::applyAsDouble).toList());
    }

    private static Climax climax(Window window, double density, double register, double bend) {
        List<Note> notes = window.notes();
        return new Climax(
                window.bars().get(0),
                window.bars().size(),
                notes.get(0),
                notes.get(notes.size() - 1),
                density,
                register,
                bend);
    }

    private static double sum(Climax climax) {
        return climax.density() + climax.register() + climax.bend();
    }
}
