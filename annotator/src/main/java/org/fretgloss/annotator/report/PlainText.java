package org.fretgloss.annotator.report;

/** Makes texts from a score safe to show: a title must not steer a terminal. */
public final class PlainText {

    private PlainText() {}

    /** The text with control characters, line breaks and direction marks replaced by a visible stand-in. */
    public static String of(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (isHarmless(c)) {
                safe.appendCodePoint(c);
            } else {
                safe.append('\uFFFD');
            }
        });
        return safe.toString();
    }

    /** Whether a character only shows itself: it steers no terminal and turns no line round. */
    static boolean isHarmless(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
