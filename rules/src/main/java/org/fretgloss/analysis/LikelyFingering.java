package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.fingering.Comfort;
import org.fretgloss.fingering.Fingering;
import org.fretgloss.fingering.HandFinder;
import org.fretgloss.solo.Solo;

/**
 * Infers string and fret where the score has none, first from the hand's effort alone, and once more when the boxes of
 * that first way are known: a place outside the box in force is then avoided.
 */
final class LikelyFingering {

    private LikelyFingering() {}

    static Fingering of(Solo solo, Homes homes, List<Silence> silences) {
        Fingering first = HandFinder.find(solo, Comfort.NEUTRAL);
        if (first.inferred().isEmpty()) {
            return first;
        }
        BoxPath boxes = BoxFinder.find(first.solo(), homes, silences);
        return HandFinder.find(
                solo,
                (note, at) ->
                        boxes.boxOf(note).map(box -> Math.abs(box.reach(at))).orElse(0));
    }
}
