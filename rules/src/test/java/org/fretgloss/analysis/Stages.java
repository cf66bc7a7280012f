package org.fretgloss.analysis;

import java.util.Optional;
import org.fretgloss.fingering.Fingering;
import org.fretgloss.solo.Solo;

/** The steps of the analysis one by one, for whoever times them. */
public final class Stages {

    private Stages() {}

    public static Phrasing phrases(Solo solo) {
        return Phrasing.of(solo, Silences.of(solo));
    }

    public static Homes homes(Solo solo, Phrasing phrasing) {
        return SectionFinder.find(solo, Passage.whole(solo, phrasing, ScoreHarmony.of(solo), Optional.empty()));
    }

    public static BoxPath boxes(Solo solo, Homes homes, Phrasing phrasing) {
        return BoxFinder.find(solo, homes, phrasing);
    }

    public static Fingering fingering(Solo bare, Homes homes) {
        return LikelyFingering.of(bare, homes);
    }
}
