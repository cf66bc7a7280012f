package org.fretgloss.marks;

import java.util.Locale;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Climax;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;

/** The two to four bars to which the solo builds. */
final class ClimaxRule implements Rule {

    /** So many standard deviations, all three measures together, and the climax is sure. */
    private static final double SURE = 6;

    @Override
    public Line line() {
        return Line.SHAPE;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return analysis.climax().stream().map(climax -> found(analysis, climax));
    }

    private static Finding found(Analysis analysis, Climax climax) {
        return Finding.at(climax.first())
                .to(climax.last())
                .text("climax")
                .explain(explanation(analysis, climax))
                .confidence(confidence(climax))
                .value("bars", climax.bars())
                .value("density", rounded(climax.density(), 100))
                .value("register", rounded(climax.register(), 100))
                .value("bend", rounded(climax.bend(), 100))
                .build();
    }

    private static String explanation(Analysis analysis, Climax climax) {
        String last = analysis.solo()
                .bars()
                .get(climax.bar().index() + climax.bars() - 1)
                .number();
        return String.format(
                Locale.ROOT,
                "Bars %s to %s stand out most from the solo's average: notes per beat %+.1f, pitch %+.1f, bends %+.1f"
                        + " standard deviations.",
                climax.bar().number(),
                last,
                rounded(climax.density(), 10),
                rounded(climax.register(), 10),
                rounded(climax.bend(), 10));
    }

    /** Half where nothing stands out, rising to 1. */
    private static double confidence(Climax climax) {
        double sum = climax.density() + climax.register() + climax.bend();
        return Math.min(1, 0.5 + sum / (2 * SURE));
    }

    /** To a tenth, a hundredth; never a negative zero. */
    private static double rounded(double value, int parts) {
        return (double) Math.round(value * parts) / parts;
    }
}
