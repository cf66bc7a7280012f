package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Lays a progression over a solo: from the bar the user names, or else where the most heard duration falls on chord
 * tones, the earlier bar where two fit alike. A form does not begin in a short pick-up.
 */
final class FormFinder {

    private FormFinder() {}

    /**
     * Finds the form's first bar.
     *
     * @throws IllegalArgumentException if the user names a bar that the solo does not have
     */
    static Form find(Solo solo, Progression progression, Optional<String> statedStart) {
        return new Form(
                progression,
                statedStart.map(number -> barNumbered(solo, number)).orElseGet(() -> bestStart(solo, progression)));
    }

    private static Bar barNumbered(Solo solo, String number) {
        return solo.bars().stream()
                .filter(bar -> bar.number().equals(number))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the form cannot start in bar " + number
                        + ": the solo has bars " + solo.bars().get(0).number() + " to "
                        + solo.bars().get(solo.bars().size() - 1).number()));
    }

    private static Bar bestStart(Solo solo, Progression progression) {
        List<Bar> bars = solo.bars();
        int first = firstFullBar(bars);
        int candidates = Math.min(progression.bars().size(), bars.size() - first);
        FormFit fit = FormFit.of(solo, progression);
        Bar best = bars.get(first);
        Fraction most = Fraction.of(-1);
        for (int i = first; i < first + candidates; i++) {
            Fraction onChords = fit.startingAt(i);
            if (onChords.isMoreThan(most)) {
                most = onChords;
                best = bars.get(i);
            }
        }
        return best;
    }

    private static int firstFullBar(List<Bar> bars) {
        return IntStream.range(0, bars.size())
                .filter(i -> !bars.get(i).isPickUp())
                .findFirst()
                .orElse(0);
    }
}
