package org.fretgloss.annotator.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The names of MusicXML's elements, from W3C's schema of version 4.0, which holds those of all versions before. */
final class ElementNames {

    private static final String TABLE = "musicxml-elements.txt";

    private ElementNames() {}

    static Set<String> read() {
        try (InputStream table = Objects.requireNonNull(ElementNames.class.getResourceAsStream(TABLE), TABLE)) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(TABLE, e);
        }
    }
}
