package org.fretgloss.annotator.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Remembers where the notes of a score stand, and their lyrics. */
final class NoteRecorder {

    private final List<NoteSite> notes = new ArrayList<>();
    private final List<LyricSite> lyrics = new ArrayList<>();
    private int ordinal;

    private OptionalInt digit = OptionalInt.empty();
    private Optional<String> ourLine = Optional.empty();
    private final StringBuilder words = new StringBuilder();

    void started(ElementPath path, XMLStreamReader reader) {
        if (path.isNote()) {
            ordinal++;
        } else if (path.isLyric()) {
            digit = singleDigit(reader.getAttributeValue(null, "number"));
            ourLine = lineOf(reader.getAttributeValue(null, "name"));
            words.setLength(0);
        }
    }

    void text(ElementPath path, XMLStreamReader reader) {
        if (path.isLyricText() && ourLine.isPresent()) {
            words.append(reader.getText());
        }
    }

    /** The path's last element has just been read to its end. */
    void ended(ElementPath path, ElementSite site) {
        if (path.isNote()) {
            notes.add(new NoteSite(ordinal, path.part(), site, path.last().beforePlayback()));
        } else if (path.isLyric()) {
            lyrics.add(new LyricSite(ordinal, site.start(), site.end(), digit, ourLine, words.toString()));
        }
    }

    /** Ordinal of the note that began last; 0 before the first. */
    int ordinal() {
        return ordinal;
    }

    List<NoteSite> notes() {
        return notes;
    }

    List<LyricSite> lyrics() {
        return lyrics;
    }

    private static OptionalInt singleDigit(@Nullable String number) {
        if (number == null) {
            return OptionalInt.of(1);
        }
        String trimmed = number.trim();
        return trimmed.length() == 1 && trimmed.charAt(0) >= '0' && trimmed.charAt(0) <= '9'
                ? OptionalInt.of(trimmed.charAt(0) - '0')
                : OptionalInt.empty();
    }

    private static Optional<String> lineOf(@Nullable String name) {
        return Optional.ofNullable(name)
                .filter(present -> present.startsWith(LyricSite.OUR_NAME))
                .map(ours -> ours.substring(LyricSite.OUR_NAME.length()));
    }
}
