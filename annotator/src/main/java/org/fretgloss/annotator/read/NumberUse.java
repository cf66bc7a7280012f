package org.fretgloss.annotator.read;

/**
 * What the reader wants of a number.
 *
 * @param shape which numbers are of use
 * @param instead what it does where another value stands, as the end of a sentence
 */
record NumberUse(NumberShape shape, String instead) {}
