package org.fretgloss.rule;

import java.math.BigDecimal;
import java.util.function.Function;
import org.fretgloss.time.Fraction;

/**
 * A declared setting of a rule.
 *
 * @param name lower case, words joined by hyphens; unique within the rule
 * @param type the type of its value
 * @param byDefault the value where nothing is set
 * @param range the values allowed, in words: "1 to 2"
 * @param meaning what it does, with its unit
 * @param reader turns a setting's text into a value, or throws IllegalArgumentException
 * @param <T> the type of its value
 */
public record Option<T>(
        String name, Class<T> type, T byDefault, String range, String meaning, Function<String, T> reader) {

    /** A whole number between two bounds, both allowed. */
    public static Option<Integer> ofInt(String name, int byDefault, int least, int most, String meaning) {
        return new Option<>(name, Integer.class, byDefault, least + " to " + most, meaning, text -> {
            int value = Integer.parseInt(text);
            if (value < least || value > most) {
                throw new IllegalArgumentException("out of range");
            }
            return value;
        });
    }

    /** An exact number ("3", "7/2" or "3.5") between two bounds, both allowed. */
    public static Option<Fraction> ofFraction(
            String name, Fraction byDefault, Fraction least, Fraction most, String meaning) {
        return new Option<>(name, Fraction.class, byDefault, least + " to " + most, meaning, text -> {
            Fraction value = readFraction(text);
            if (value.isLessThan(least) || value.isMoreThan(most)) {
                throw new IllegalArgumentException("out of range");
            }
            return value;
        });
    }

    /** A share between 0 and 1. */
    public static Option<Double> ofShare(String name, double byDefault, String meaning) {
        return new Option<>(name, Double.class, byDefault, "0 to 1", meaning, text -> {
            double value = Double.parseDouble(text);
            if (!(value >= 0 && value <= 1)) {
                throw new IllegalArgumentException("out of range");
            }
            return value;
        });
    }

    /** Yes or no. */
    public static Option<Boolean> ofFlag(String name, boolean byDefault, String meaning) {
        return new Option<>(name, Boolean.class, byDefault, "true or false", meaning, text -> switch (text) {
            case "true" -> true;
            case "false" -> false;
            default -> throw new IllegalArgumentException("neither true nor false");
        });
    }

    private static Fraction readFraction(String text) {
        if (text.indexOf('.') < 0) {
            return Fraction.parse(text);
        }
        BigDecimal decimal = new BigDecimal(text);
        return Fraction.of(
                decimal.unscaledValue().longValueExact(),
                java.math.BigInteger.TEN.pow(Math.max(0, decimal.scale())).longValueExact());
    }
}
