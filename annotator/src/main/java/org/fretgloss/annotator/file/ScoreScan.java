package org.fretgloss.annotator.file;

import java.util.List;
import java.util.NoSuchElementException;

/**
 * Where everything that matters for writing stands in the text of a score.
 *
 * @param text the text that was scanned
 * @param prefix what element names begin with: empty, or a namespace prefix and its colon
 * @param root the whole score
 * @param header the identification and what is in it
 * @param notes every note element, in document order
 * @param lyrics every lyric element, in document order
 */
public record ScoreScan(
        String text, String prefix, ElementSite root, Header header, List<NoteSite> notes, List<LyricSite> lyrics) {

    public ScoreScan {
        notes = List.copyOf(notes);
        lyrics = List.copyOf(lyrics);
    }

    /**
     * Scans a score's text.
     *
     * @throws ScoreException if the text is no MusicXML score, or is damaged or built to do harm
     */
    public static ScoreScan of(String text) throws ScoreException {
        return NoteScanner.over(text).scan();
    }

    /**
     * The note of an ordinal.
     *
     * @throws NoSuchElementException if there is none
     */
    public NoteSite note(int ordinal) {
        if (ordinal < 1 || ordinal > notes.size()) {
            throw new NoSuchElementException("no note " + ordinal + " among " + notes.size());
        }
        return notes.get(ordinal - 1);
    }

    /** Our own lyrics, in document order. */
    public List<LyricSite> ours() {
        return lyrics.stream().filter(LyricSite::isOurs).toList();
    }

    /** Whether anything of ours stands in the text. */
    public boolean isAnnotated() {
        return !header.fields().isEmpty() || lyrics.stream().anyMatch(LyricSite::isOurs);
    }
}
