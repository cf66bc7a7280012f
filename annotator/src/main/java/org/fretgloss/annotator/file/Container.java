package org.fretgloss.annotator.file;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a score lies in. A file's bytes decide it; its name only says it. */
public enum Container {
    COMPRESSED("compressed", ".mxl"),
    PLAIN("not compressed", ".musicxml", ".xml");

    private final String words;
    private final List<String> endings;

    Container(String words, String... endings) {
        this.words = words;
        this.endings = List.of(endings);
    }

    /** What a name says by its ending; nothing where it has none of the usual ones. */
    public static Optional<Container> saidBy(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(container -> container.endings.stream().anyMatch(lower::endsWith))
                .findFirst();
    }

    /** Whether a name says another container than this. */
    public boolean isDeniedBy(String name) {
        return saidBy(name).filter(said -> said != this).isPresent();
    }

    /** The usual ending of a file of this kind, with its dot. */
    public String ending() {
        return endings.get(0);
    }

    /** "not compressed". */
    @Override
    public String toString() {
        return words;
    }
}
