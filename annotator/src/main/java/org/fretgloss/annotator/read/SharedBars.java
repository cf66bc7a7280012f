package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Meter;

/**
 * What the parts of a score, which sound together, say of each bar: gone through once, however many parts ask.
 *
 * @param filled what the longest voice of any part fills, in quarter notes
 * @param meters the meter of the first part that has one
 */
record SharedBars(List<Fraction> filled, List<Optional<Meter>> meters) {

    SharedBars {
        filled = List.copyOf(filled);
        meters = List.copyOf(meters);
    }

    static SharedBars of(List<Timeline> parts) {
        List<Fraction> filled = new ArrayList<>();
        List<Optional<Meter>> meters = new ArrayList<>();
        for (Timeline part : parts) {
            for (int bar = 0; bar < part.measures().size(); bar++) {
                Measured measure = part.measures().get(bar);
                if (bar == filled.size()) {
                    filled.add(measure.filled());
                    meters.add(measure.meter());
                } else {
                    filled.set(bar, filled.get(bar).max(measure.filled()));
                    meters.set(bar, meters.get(bar).or(measure::meter));
                }
            }
        }
        return new SharedBars(filled, meters);
    }
}
