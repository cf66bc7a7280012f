package org.fretgloss.annotator.read;

/**
 * Something the user is told once about how a score was read: a choice that was made, or what had to be left out.
 *
 * @param text one line, without a full stop
 */
public record Notice(String text) {}
