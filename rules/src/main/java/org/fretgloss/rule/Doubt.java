package org.fretgloss.rule;

import java.util.Optional;

/**
 * What makes a finding a doubt of proof-reading rather than a mark.
 *
 * @param severity how much it weighs
 * @param suggestion what was probably meant, where that can be said
 */
public record Doubt(Severity severity, Optional<Suggestion> suggestion) {}
