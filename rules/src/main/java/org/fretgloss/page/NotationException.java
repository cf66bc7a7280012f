package org.fretgloss.page;

/** An example that is not written in the notation of {@link SoloText}; the message names the place. */
public final class NotationException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    NotationException(String message) {
        super(message);
    }

    NotationException(String message, Throwable cause) {
        super(message, cause);
    }
}
