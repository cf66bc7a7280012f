package org.fretgloss.annotator.write;

/** The program's own output is not what it should be; nothing may be written. The message is one line. */
public final class SelfCheckException extends RuntimeException {

    private static final long serialVersionUID = 1;

    SelfCheckException(String message) {
        super(message);
    }

    SelfCheckException(String message, Throwable cause) {
        super(message, cause);
    }
}
