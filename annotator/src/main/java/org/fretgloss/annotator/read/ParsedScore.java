package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.audiveris.proxymusic.Note;

/**
 * A score as a tree, before any of it is understood.
 *
 * @param title the work's or movement's title, which may be empty
 * @param parts in the order of the document
 * @param ordinals for each note element, which has no equal but itself, its 1-based place among all note elements of the document
 * @param vibratos ordinals of the note elements that a processing instruction gives a vibrato
 * @param strangers what the user is told about elements that MusicXML does not have
 */
record ParsedScore(
        String title, List<PartSource> parts, Map<Note, Integer> ordinals, Set<Integer> vibratos, Notices strangers) {

    ParsedScore {
        parts = List.copyOf(parts);
    }

    boolean hasVibrato(Note note) {
        return vibratos.contains(ordinal(note));
    }

    /** The 1-based place of a note element among all of the document. */
    int ordinal(Note note) {
        return Optional.ofNullable(ordinals.get(note)).orElseThrow();
    }
}
