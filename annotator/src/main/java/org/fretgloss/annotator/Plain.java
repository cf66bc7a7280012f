package org.fretgloss.annotator;

import java.util.List;
import org.fretgloss.annotator.file.ScoreFile;

/**
 * A score without our lines.
 *
 * @param source the score as it was given
 * @param text its text without them
 * @param notices what the user should know, a line each
 */
public record Plain(ScoreFile source, String text, List<String> notices) {

    public Plain {
        notices = List.copyOf(notices);
    }

    /** The file to write, in the container and encoding of the source. */
    public byte[] bytes() {
        return source.withText(text);
    }
}
