package org.fretgloss.marks;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
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
        String standingOut = Stream.of(
                        compared(climax.density(), "more notes per beat", "fewer notes per beat"),
                        compared(climax.register(), "higher notes", "lower notes"),
                        compared(climax.bend(), "wider bends", "narrower bends"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return "Bars " + climax.bar().number() + " to " + last + " stand out most from the solo's average: "
                + standingOut + ", in standard deviations.";
    }

    /** Nothing where the measure is the solo's average. */
    private static Optional<String> compared(double measure, String above, String below) {
        double tenths = rounded(measure, 10);
        return tenths == 0
                ? Optional.empty()
                : Optional.of(String.format(Locale.ROOT, "%s (%+.1f)", tenths > 0 ? above : below, tenths));
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
