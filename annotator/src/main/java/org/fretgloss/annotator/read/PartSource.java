package org.fretgloss.annotator.read;

import java.util.List;
import java.util.Set;
import org.audiveris.proxymusic.ScorePartwise;
import org.fretgloss.solo.Part;

/**
 * A part of a score as it was parsed.
 *
 * @param place its place among the parts, from 0
 * @param part what it is called
 * @param programs 1-based MIDI programs that its header names
 * @param percussion whether one of its instruments is on the MIDI channel of percussion
 * @param measures its bars, in order
 * @param unread what of the score's numbers cannot be used
 */
record PartSource(
        int place,
        Part part,
        Set<Integer> programs,
        boolean percussion,
        List<ScorePartwise.Part.Measure> measures,
        Unread unread) {

    private static final int FIRST_GUITAR = 25;
    private static final int LAST_GUITAR = 32;
    private static final int LAST_BASS = 40;

    PartSource {
        programs = Set.copyOf(programs);
        measures = List.copyOf(measures);
    }

    /** General MIDI has guitars at programs 25 to 32, counted from 1. */
    boolean playsGuitar() {
        return programs.stream().anyMatch(program -> program >= FIRST_GUITAR && program <= LAST_GUITAR);
    }

    /** General MIDI has basses at programs 33 to 40, counted from 1. */
    boolean playsBass() {
        return programs.stream().anyMatch(program -> program > LAST_GUITAR && program <= LAST_BASS);
    }

    boolean playsGuitarOrBass() {
        return playsGuitar() || playsBass();
    }

    /** How messages call it: its name, or its identifier where it has none. */
    String label() {
        if (!part.name().isBlank()) {
            return "'" + part.name() + "'";
        }
        return part.id().isBlank() ? "part " + (place + 1) : "part " + part.id();
    }
}
