package org.fretgloss.annotator.config;

import java.util.List;

/**
 * A teacher's decisions about one score.
 *
 * @param accepted doubts that were looked at and let stand, in the order of the file
 */
public record Corrections(List<Accepted> accepted) {

    /** Nothing decided yet. */
    public static final Corrections NONE = new Corrections(List.of());

    public Corrections {
        accepted = List.copyOf(accepted);
    }
}
