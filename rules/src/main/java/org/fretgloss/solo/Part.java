package org.fretgloss.solo;

/**
 * The part of a score that holds the solo.
 *
 * @param id its identifier in the file
 * @param name its printed name, which may be empty
 */
public record Part(String id, String name) {}
