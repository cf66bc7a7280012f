package org.fretgloss.annotator.cli;

import java.util.List;
import java.util.Locale;
import org.fretgloss.annotator.cli.Difference.Sort;

/**
 * How far labels and what is found agree.
 *
 * @param labelled how many marks a teacher wrote down
 * @param hits how many of them are found: the same rule on the same note
 * @param besides how many are found that no label has
 * @param different how many of the hits differ in their text or in a value
 */
record Agreement(int labelled, int hits, int besides, int different) {

    static final Agreement NONE = new Agreement(0, 0, 0, 0);

    /** Of so many labels, with these differences. */
    static Agreement of(int labelled, List<Difference> differences) {
        return new Agreement(
                labelled,
                labelled - count(Sort.MISSING, differences),
                count(Sort.UNEXPECTED, differences),
                count(Sort.DIFFERENT, differences));
    }

    private static int count(Sort sort, List<Difference> differences) {
        return (int) differences.stream()
                .filter(difference -> difference.sort() == sort)
                .count();
    }

    Agreement plus(Agreement other) {
        return new Agreement(
                labelled + other.labelled, hits + other.hits, besides + other.besides, different + other.different);
    }

    /** The share of what is found that is labelled, 0 to 1. */
    double precision() {
        return share(hits, hits + besides);
    }

    /** The share of the labels that is found, 0 to 1. */
    double recall() {
        return share(hits, labelled);
    }

    /** A row of the published table. */
    String row(String name) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %.0f %% | %.0f %% | %d |",
                name,
                labelled,
                hits,
                besides,
                100 * precision(),
                100 * recall(),
                different);
    }

    private static double share(int part, int whole) {
        return whole == 0 ? 1 : (double) part / whole;
    }
}
