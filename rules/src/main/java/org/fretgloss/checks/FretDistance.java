package org.fretgloss.checks;

/**
 * Distances along the neck. In equal temperament fret n of a string of length L lies L·(1 − 2^(−n/12)) from the nut
 * (the twelfth root of two, common practice in instrument building).
 *
 * @param scaleLength length of the open string, in millimetres
 */
record FretDistance(int scaleLength) {

    /** Millimetres between two frets; a capo is left out of account. */
    double between(int one, int other) {
        return Math.abs(fromNut(one) - fromNut(other));
    }

    private double fromNut(int fret) {
        return scaleLength * (1 - Math.pow(2, -fret / 12.0));
    }
}
