package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/**
 * The bars of the solo, one after the other. A bar lasts as long as the longest voice of any part, since the parts sound
 * together; where nothing stands it lasts as long as its meter says.
 */
final class BarRuler {

    private final Timeline solo;
    private final SharedBars shared;
    private final boolean isSigned;
    private final List<Bar> bars = new ArrayList<>();

    private BarRuler(Timeline solo, SharedBars shared) {
        this.solo = solo;
        this.shared = shared;
        this.isSigned = solo.measures().stream().anyMatch(bar -> bar.meter().isPresent());
    }

    /**
     * Measures the bars out.
     *
     * @param shared of all parts, this one among them
     * @throws ScoreException if their lengths cannot be counted
     */
    static List<Bar> bars(Timeline solo, SharedBars shared) throws ScoreException {
        return new BarRuler(solo, shared).measure();
    }

    private List<Bar> measure() throws ScoreException {
        Fraction start = Fraction.ZERO;
        for (int i = 0; i < solo.measures().size(); i++) {
            Bar bar = bar(i, start);
            bars.add(bar);
            try {
                start = Exact.checked(bar.end());
            } catch (ArithmeticException e) {
                throw new ScoreException(
                        solo.source().label() + ", bar " + bar.number()
                                + ": the lengths up to here are too long or too fine to be counted;"
                                + " export the score again",
                        e);
            }
        }
        return List.copyOf(bars);
    }

    private Bar bar(int index, Fraction start) {
        Measured measure = solo.measures().get(index);
        Fraction sounding = shared.filled().get(index).max(Fraction.ZERO);
        Optional<Meter> signed = meter(index);
        Meter meter = signed.orElse(freeMeter(sounding));
        Fraction length = sounding.isPositive() ? sounding : meter.barLength();
        Fraction lead = signed.isPresent() ? lead(index, meter.barLength().minus(length)) : Fraction.ZERO;
        return new Bar(
                index,
                number(index, measure, lead),
                start,
                length,
                measure.filled(),
                lead,
                meter,
                measure.key(),
                measure.repeatsForward(),
                measure.repeatsBackward(),
                measure.implicit());
    }

    /** A part that never says its meter is counted in that of the parts that sound with it. */
    private Optional<Meter> meter(int index) {
        return isSigned ? solo.measures().get(index).meter() : shared.meters().get(index);
    }

    /** Free music is counted in quarters. */
    private static Meter freeMeter(Fraction length) {
        return new Meter((int) Math.max(1, -length.negated().floor()), 4);
    }

    /**
     * A short first bar is right-aligned, and so is one that completes the bar before it: the rest of a bar that a sign
     * splits, or the pick-up of a section that follows a repeat.
     */
    private Fraction lead(int index, Fraction missing) {
        if (!missing.isPositive() || solo.measures().size() == 1) {
            return Fraction.ZERO;
        }
        if (index == 0) {
            return missing;
        }
        Measured measure = solo.measures().get(index);
        Bar before = bars.get(index - 1);
        boolean mayComplete = measure.implicit() || measure.repeatsForward() || before.repeatsBackward();
        boolean completes = before.length().equals(missing) && before.lead().isZero();
        return mayComplete && completes ? missing : Fraction.ZERO;
    }

    private String number(int index, Measured measure, Fraction lead) {
        String printed = measure.number();
        if (index == 0 && lead.isPositive() && (measure.implicit() || printed.isEmpty() || printed.startsWith("X"))) {
            return "0";
        }
        return printed.isEmpty() ? counted(index) : printed;
    }

    /** The number after that of the bar before. */
    private String counted(int index) {
        return Optional.of(index)
                .filter(i -> i > 0)
                .map(i -> bars.get(i - 1).number())
                .filter(before -> before.matches("\\d{1,8}"))
                .map(before -> String.valueOf(Integer.parseInt(before) + 1))
                .orElse(String.valueOf(index + 1));
    }
}
