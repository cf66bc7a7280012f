package org.fretgloss.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.fingering.Fingering;
import org.fretgloss.fingering.HandFinder;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.BoxLayout;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Solo;

/**
 * Infers string and fret where the score has none. A lead is played around the home's box 1, which guitarists know best
 * (common practice, no source), unless another place is easier for the hand.
 */
final class LikelyFingering {

    /** Frets from box 1 beyond which further distance does not matter. */
    private static final int FAR = 3;

    private static final int CHROMAS = 12;

    private LikelyFingering() {}

    static Fingering of(Solo solo, Homes homes) {
        List<List<Box>> firstBoxes = IntStream.range(0, CHROMAS)
                .mapToObj(tonic -> firstBoxes(solo.tuning(), tonic))
                .toList();
        return HandFinder.find(
                solo,
                (note, at) -> fromFirstBox(firstBoxes.get(homes.at(note).scale().boxTonicChroma()), at));
    }

    private static List<Box> firstBoxes(Tuning tuning, int tonic) {
        return BoxLayout.of(tuning, tonic).stream()
                .filter(box -> box.number() == 1)
                .toList();
    }

    private static int fromFirstBox(List<Box> boxes, StringFret at) {
        int nearest = FAR;
        for (Box box : boxes) {
            nearest = Math.min(nearest, Math.abs(box.reach(at)));
        }
        return nearest;
    }
}
