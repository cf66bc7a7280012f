package org.fretgloss.analysis;

import java.util.List;

/**
 * The mean of some values and their population standard deviation.
 *
 * @param mean their average
 * @param deviation exactly 0 where all values are alike
 */
record Spread(double mean, double deviation) {

    static Spread of(List<Double> values) {
        double mean = values.stream().mapToDouble(value -> value).average().orElse(0);
        boolean alike = values.stream().distinct().count() < 2;
        double variance = values.stream()
                .mapToDouble(value -> (value - mean) * (value - mean))
                .average()
                .orElse(0);
        return new Spread(mean, alike ? 0 : Math.sqrt(variance));
    }

    /** How many deviations a value stands above the mean; 0 where all values are alike. */
    double standing(double value) {
        return deviation == 0 ? 0 : (value - mean) / deviation;
    }
}
