package org.fretgloss.annotator.write;

import java.util.List;
import org.fretgloss.rule.Gloss;

/**
 * What is to be written under the notes.
 *
 * @param texts in document order, under one note in the order of lines; one for each line and note
 * @param uncarried glosses with a text that no note may bear; they stay unwritten, whatever their line
 */
public record Composition(List<LineText> texts, List<Gloss> uncarried) {

    public Composition {
        texts = List.copyOf(texts);
        uncarried = List.copyOf(uncarried);
    }
}
