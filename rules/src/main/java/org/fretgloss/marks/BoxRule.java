package org.fretgloss.marks;

import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.BoxSpan;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.neck.Box;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;

/** The box the hand is in, told where it begins. */
final class BoxRule implements Rule {

    /** Frets by which a box leads the next best one when it is midway between a guess and sure: a stretch of one note. */
    private static final double EVEN_LEAD = 2;

    @Override
    public Line line() {
        return Line.BOX;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return analysis.boxes().spans().stream().map(span -> found(analysis, span));
    }

    private static Finding found(Analysis analysis, BoxSpan span) {
        Box box = span.box();
        return Finding.at(span.first())
                .to(span.last())
                .text("box " + box.number() + " fr" + box.lowestFret())
                .explain("From " + analysis.placeOf(span.first()) + " on the hand is in box " + box.number() + " of "
                        + boxesOf(analysis.homeAt(span.first()).scale()) + ": frets " + box.lowestFret() + " to "
                        + box.highestFret()
                        + ".")
                .confidence(confidence(analysis, span))
                .value("box", box.number())
                .value("lowestFret", box.lowestFret())
                .value("highestFret", box.highestFret())
                .build();
    }

    /**
     * A box is the surer the more frets the next best box would reach, and the less of its notes lie outside it; but some
     * box is always in force. It is no surer than the places of its notes.
     */
    static double confidence(Analysis analysis, BoxSpan span) {
        double lead = span.lead() / (span.lead() + EVEN_LEAD);
        return span.sureness(analysis) * (1 + lead * span.shareInside(analysis.solo())) / 2;
    }

    private static String boxesOf(HomeScale home) {
        String boxes = home.boxTonic() + " minor pentatonic";
        return boxes.equals(home.toString()) ? boxes : boxes + ", whose boxes finger " + home;
    }
}
