package org.fretgloss.time;

import java.util.Map;

/** Fractions as musicians write them: "3", "3½", "⅔", and where no such sign exists "7/5". */
public final class Glyphs {

    private static final Map<Fraction, String> SIGNS = Map.of(
            Fraction.of(1, 4), "¼",
            Fraction.of(1, 3), "⅓",
            Fraction.of(1, 2), "½",
            Fraction.of(2, 3), "⅔",
            Fraction.of(3, 4), "¾");

    private Glyphs() {}

    /** Writes a fraction; a negative one with a minus sign before it. */
    public static String of(Fraction fraction) {
        if (fraction.isNegative()) {
            return "-" + of(fraction.negated());
        }
        if (fraction.isWhole()) {
            return fraction.toString();
        }
        long whole = fraction.floor();
        String sign = SIGNS.get(fraction.minus(Fraction.of(whole)));
        if (sign == null) {
            return fraction.toString();
        }
        return whole == 0 ? sign : whole + sign;
    }

    /**
     * Reads what {@link #of} writes, and any exact fraction ("7/2") besides.
     *
     * @throws NumberFormatException if the text is neither
     */
    public static Fraction parse(String text) {
        if (text.startsWith("-")) {
            return parse(text.substring(1)).negated();
        }
        for (Map.Entry<Fraction, String> sign : SIGNS.entrySet()) {
            if (text.endsWith(sign.getValue())) {
                String whole = text.substring(0, text.length() - sign.getValue().length());
                return whole.isEmpty() ? sign.getKey() : sign.getKey().plus(Fraction.of(Long.parseLong(whole)));
            }
        }
        return Fraction.parse(text);
    }
}
