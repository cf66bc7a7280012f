package org.fretgloss.evaluation;

import java.util.Locale;

/**
 * A line of the table.
 *
 * @param what what was measured
 * @param value a share or an F1 score, 0 to 1
 * @param cases over how many cases
 */
record Figure(String what, double value, int cases) {

    String row() {
        return String.format(Locale.ROOT, "| %s | %.4f | %d |", what, value, cases);
    }
}
