package org.fretgloss.rule;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A lyric line of ours, in the order in which lines are numbered. */
public enum Line {
    BOX(true),
    MOVES(true),
    OUTLINE(true),
    NOTES(true),
    SHAPE(true),
    PHRASES(false),
    DEGREES(false),
    CHORDS(false),
    DOUBTS(false);

    private final boolean onByDefault;

    Line(boolean onByDefault) {
        this.onByDefault = onByDefault;
    }

    public boolean isOnByDefault() {
        return onByDefault;
    }

    /** The line of that name in lower case. */
    public static Optional<Line> named(String name) {
        return Arrays.stream(values())
                .filter(line -> line.toString().equals(name))
                .findFirst();
    }

    /** "box", "moves" ... as it stands in the score and on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
