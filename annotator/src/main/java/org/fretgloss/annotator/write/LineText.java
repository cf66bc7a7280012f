package org.fretgloss.annotator.write;

import org.fretgloss.rule.Line;

/**
 * What one of our lines says under one note.
 *
 * @param line the line
 * @param element ordinal of the note element that bears the lyric
 * @param text what it says, as it stands in the score
 */
public record LineText(Line line, int element, String text) {}
