package org.fretgloss.pitch;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a text from left to right, one pattern after another. */
final class TextCursor {

    private final String text;
    private int position;

    TextCursor(String text) {
        this.text = text;
    }

    /** Moves past the pattern if it stands here. */
    Optional<MatchResult> take(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(position, text.length()).useTransparentBounds(true);
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        position = matcher.end();
        return Optional.of(matcher.toMatchResult());
    }

    boolean isAtEnd() {
        return position == text.length();
    }

    String rest() {
        return text.substring(position);
    }
}
