package org.fretgloss.annotator.read;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * How a number must be written to be of use.
 *
 * @param form what it looks like
 * @param least the smallest that is believed
 * @param most the largest that is believed
 * @param name what it is, for people: "whole number from 0 to 9"
 */
record NumberShape(Pattern form, BigDecimal least, BigDecimal most, String name) {

    private static final Pattern WHOLE_FORM = Pattern.compile("[+-]?\\d+");

    /** As XML Schema writes decimals: without exponents (W3C, XML Schema 1.0 part 2, 3.2.3). */
    private static final Pattern DECIMAL_FORM = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)");

    /** What fits into 30 bits, as {@link Numbers#whole} reads it. */
    private static final long MOST_WHOLE = (1L << 30) - 1;

    /** Any whole number: whether it means something, only its neighbours tell. */
    static final NumberShape ANY_WHOLE = new NumberShape(
            WHOLE_FORM,
            BigDecimal.valueOf(-MOST_WHOLE),
            BigDecimal.valueOf(MOST_WHOLE),
            "whole number that can be used");

    static NumberShape whole(long least, long most) {
        return new NumberShape(
                WHOLE_FORM,
                BigDecimal.valueOf(least),
                BigDecimal.valueOf(most),
                "whole number from " + least + " to " + most);
    }

    static NumberShape decimal(long least, long most) {
        return decimal(BigDecimal.valueOf(least), BigDecimal.valueOf(most), "number from " + least + " to " + most);
    }

    static NumberShape decimal(BigDecimal least, BigDecimal most, String name) {
        return new NumberShape(DECIMAL_FORM, least, most, name);
    }

    /** Whether a text is such a number; white space around it must be gone. */
    boolean accepts(String text) {
        if (!form.matcher(text).matches()) {
            return false;
        }
        BigDecimal number = new BigDecimal(text);
        return number.compareTo(least) >= 0 && number.compareTo(most) <= 0;
    }
}
