package org.fretgloss.annotator.file;

/**
 * A score that cannot be used, told in a musician's words: what is wrong, where, and what to do. The message is one line
 * and does not name the file; whoever knows the file's name puts it in front.
 */
public final class ScoreException extends Exception {

    private static final long serialVersionUID = 1;

    public ScoreException(String message) {
        super(message);
    }

    public ScoreException(String message, Throwable cause) {
        super(message, cause);
    }
}
