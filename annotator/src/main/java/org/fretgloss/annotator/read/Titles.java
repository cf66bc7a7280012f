package org.fretgloss.annotator.read;

import java.util.Optional;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Work;
import org.jspecify.annotations.Nullable;

/** What a score is called. */
final class Titles {

    private Titles() {}

    /** The work's title, else the movement's; empty if the score has neither. */
    static String of(@Nullable Work work, @Nullable String movement) {
        return Stream.of(Optional.ofNullable(work).map(Work::getWorkTitle), Optional.ofNullable(movement))
                .flatMap(Optional::stream)
                .map(String::strip)
                .filter(title -> !title.isEmpty())
                .findFirst()
                .orElse("");
    }
}
