package org.fretgloss.rule;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.fretgloss.solo.Bar;

/**
 * Decides which findings are written. A text is left out where the rule is not sure enough, where another finding that
 * is written makes it superfluous, and where it would repeat the last text of its line within the same bar.
 */
final class Texts {

    /** The last text written on a line, and the bar it stands in. */
    private record Last(Bar bar, String text) {}

    private Texts() {}

    /**
     * Resolves the texts of glosses that stand in their final order.
     *
     * @param threshold the least confidence of each gloss with which it is written
     */
    static List<Gloss> resolve(List<Gloss> ordered, ToDoubleFunction<Gloss> threshold) {
        List<Gloss> sure = ordered.stream()
                .map(gloss -> gloss.finding().confidence() < threshold.applyAsDouble(gloss) ? gloss.unwritten() : gloss)
                .toList();
        Set<Finding.Absorbed> absorbed = new HashSet<>();
        sure.stream()
                .filter(gloss -> gloss.text().isPresent())
                .forEach(gloss -> absorbed.addAll(gloss.finding().absorbs()));
        return withoutRepeats(sure.stream()
                .map(gloss -> absorbed.contains(new Finding.Absorbed(
                                gloss.rule(), gloss.finding().note()))
                        ? gloss.unwritten()
                        : gloss)
                .toList());
    }

    private static List<Gloss> withoutRepeats(List<Gloss> glosses) {
        Map<Line, Last> lastOf = new EnumMap<>(Line.class);
        List<Gloss> resolved = new ArrayList<>();
        for (Gloss gloss : glosses) {
            Line line = gloss.line();
            Optional<Last> next =
                    gloss.text().map(text -> new Last(gloss.finding().note().bar(), text));
            boolean repeats = next.isPresent() && next.get().equals(lastOf.get(line));
            next.ifPresent(last -> lastOf.put(line, last));
            resolved.add(repeats ? gloss.unwritten() : gloss);
        }
        return resolved;
    }
}
