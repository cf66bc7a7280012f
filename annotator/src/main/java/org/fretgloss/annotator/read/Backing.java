package org.fretgloss.annotator.read;

import java.util.List;
import org.fretgloss.analysis.Accompaniment;

/**
 * What other parts play under the solo, where the score names no chords.
 *
 * @param parts what the parts are called in messages, in the order of the score
 * @param notes what they play together, on the solo's time line
 */
public record Backing(List<String> parts, Accompaniment notes) {

    /** Nobody plays, or the score names its chords. */
    public static final Backing NONE = new Backing(List.of(), new Accompaniment(List.of()));

    public Backing {
        parts = List.copyOf(parts);
    }
}
