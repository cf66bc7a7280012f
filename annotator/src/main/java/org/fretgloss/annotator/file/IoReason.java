package org.fretgloss.annotator.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.Optional;

/** Why a file operation failed, in words. */
final class IoReason {

    private IoReason() {}

    static String of(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return "you have no permission";
        }
        if (failure instanceof FileSystemException named) {
            return Optional.ofNullable(named.getReason()).orElse("the system refuses");
        }
        return Optional.ofNullable(failure.getMessage()).orElse("the system refuses");
    }
}
