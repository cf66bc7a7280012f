package org.fretgloss.rule;

/**
 * A provider, or one rule of it, that could not be taken into the rulebook.
 *
 * @param provider its name, or its class's where it could not be asked
 * @param reason what is wrong, in a sentence
 */
public record RefusedRules(String provider, String reason) {}
