package org.fretgloss.annotator.write;

/**
 * A score without our lines.
 *
 * @param text the score's text
 * @param lyrics how many lyrics of ours were taken out
 * @param edits whether their texts had been edited by hand
 */
public record Stripped(String text, int lyrics, Edits edits) {

    /** What became of our texts since they were written. */
    public enum Edits {
        /** They stand as they were written, or there were none. */
        NONE,
        /** Some were changed, added or taken out. */
        SOME,
        /** Our field is gone or damaged, so nothing tells. */
        UNKNOWN
    }
}
