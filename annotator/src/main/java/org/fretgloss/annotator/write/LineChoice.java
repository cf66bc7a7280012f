package org.fretgloss.annotator.write;

import java.util.Collection;
import java.util.Set;
import org.fretgloss.rule.Line;

/**
 * Which lines are written, and how.
 *
 * @param lines the lines
 * @param ascii whether glyphs are replaced by ASCII characters
 * @param roman whether the chords line shows Roman numerals instead of chord names
 */
public record LineChoice(Set<Line> lines, boolean ascii, boolean roman) {

    public LineChoice {
        lines = Set.copyOf(lines);
    }

    /** These lines, with glyphs and chord names. */
    public static LineChoice of(Collection<Line> lines) {
        return new LineChoice(Set.copyOf(lines), false, false);
    }
}
