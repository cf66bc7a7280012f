package org.fretgloss.marks;

import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Silence;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/** Silence between two notes that is long enough to be heard as space, told at the note before it. */
final class Space implements Rule {

    /** The shortest silence that is marked. */
    static final Option<Fraction> FROM = Option.ofFraction(
            "from", Fraction.of(3), Fraction.of(1, 2), Fraction.of(64), "shortest silence that is marked, in beats");

    @Override
    public Line line() {
        return Line.SHAPE;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(FROM);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Fraction from = settings.get(FROM);
        return analysis.silences().stream()
                .filter(silence -> !silence.beats().isLessThan(from))
                .map(silence -> found(analysis, silence));
    }

    private static Finding found(Analysis analysis, Silence silence) {
        return Finding.at(silence.before())
                .to(silence.after())
                .text("space " + length(analysis.solo(), silence))
                .explain("After the note at " + analysis.placeOf(silence.before()) + " nothing sounds for "
                        + counted(silence.beats()) + ", until " + analysis.placeOf(silence.after())
                        + ": space lets what was played sink in.")
                .value("beats", silence.beats())
                .build();
    }

    /** In bars where it begins and ends on bar lines, else in beats. */
    private static String length(Solo solo, Silence silence) {
        Bar first = solo.barAt(silence.start());
        Bar next = solo.barAt(silence.end());
        if (!first.start().equals(silence.start()) || !next.start().equals(silence.end())) {
            return Glyphs.of(silence.beats());
        }
        int bars = next.index() - first.index();
        return bars + (bars == 1 ? " bar" : " bars");
    }

    private static String counted(Fraction beats) {
        return Glyphs.of(beats) + (beats.equals(Fraction.ONE) ? " beat" : " beats");
    }
}
