package org.fretgloss.checks;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/** A bar whose longest voice does not fill its meter, or overfills it. */
final class BarLength implements Rule {

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Solo solo = analysis.solo();
        Map<Integer, List<Note>> notes = solo.notes().stream()
                .collect(Collectors.groupingBy(note -> note.bar().index()));
        return solo.bars().stream()
                .filter(bar -> isWrong(solo, bar))
                .map(bar -> notes.getOrDefault(bar.index(), List.of()))
                .filter(inBar -> !inBar.isEmpty())
                .map(BarLength::found);
    }

    private static boolean isWrong(Solo solo, Bar bar) {
        Fraction missing = missing(bar);
        boolean empty = bar.filled().isZero();
        boolean split = bar.repeatsBackward() || bar.implicit() || bar.isPickUp() || goesOnUncounted(solo, bar);
        if (missing.isZero() || empty || (split && missing.isPositive())) {
            return false;
        }
        return !isLast(solo, bar) || !missing.equals(pickUp(solo)) || missing.isNegative();
    }

    /** The next bar is not counted, and holds what is missing. */
    private static boolean goesOnUncounted(Solo solo, Bar bar) {
        return !isLast(solo, bar)
                && solo.bars().get(bar.index() + 1).implicit()
                && solo.bars().get(bar.index() + 1).filled().equals(missing(bar));
    }

    private static Fraction missing(Bar bar) {
        return bar.meter().barLength().minus(bar.filled());
    }

    private static boolean isLast(Solo solo, Bar bar) {
        return bar.index() == solo.bars().size() - 1;
    }

    /** The last bar may lack what the pick-up has: the two are one. */
    private static Fraction pickUp(Solo solo) {
        Bar first = solo.bars().get(0);
        return first.isPickUp() ? first.length() : Fraction.ZERO;
    }

    private static Finding found(List<Note> notes) {
        Bar bar = notes.get(0).bar();
        Fraction beat = bar.meter().beatLength();
        return Finding.at(notes.get(0))
                .to(notes.get(notes.size() - 1))
                .doubt(Severity.ERROR)
                .explain("The bar holds %s beats, and %s asks for %s."
                        .formatted(
                                Glyphs.of(bar.filled().dividedBy(beat)),
                                bar.meter(),
                                Glyphs.of(bar.meter().barLength().dividedBy(beat))))
                .value("beats", bar.filled().dividedBy(beat))
                .build();
    }
}
