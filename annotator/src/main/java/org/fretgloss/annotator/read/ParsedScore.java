package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.audiveris.proxymusic.Note;

/**
 * A score as a tree, before any of it is understood.
 *
 * @param title the work's or movement's title, which may be empty
 * @param parts in the order of the document
 * @param ordinals for each note element, which has no equal but itself, its 1-based place among all note elements of the document
 */
record ParsedScore(String title, List<PartSource> parts, Map<Note, Integer> ordinals) {

    ParsedScore {
        parts = List.copyOf(parts);
    }

    /** The 1-based place of a note element among all of the document. */
    int ordinal(Note note) {
        return Optional.ofNullable(ordinals.get(note)).orElseThrow();
    }
}
