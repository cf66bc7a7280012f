package org.fretgloss.annotator.file;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A lyric element of a note.
 *
 * @param note ordinal of the note that bears it
 * @param start offset of its {@code <}
 * @param end offset just after it
 * @param digit its number where that is a single digit; 1 where it has no number
 * @param ourLine which of our lines it belongs to, as named in the file; none where it is not ours
 * @param text its text where it is ours, otherwise empty
 */
public record LyricSite(int note, int start, int end, OptionalInt digit, Optional<String> ourLine, String text) {

    /** What our lyrics' names begin with; the line follows. */
    public static final String OUR_NAME = "fretgloss:";

    public boolean isOurs() {
        return ourLine.isPresent();
    }
}
