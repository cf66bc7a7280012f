package org.fretgloss.annotator.generated;

import java.util.List;
import java.util.Set;

/**
 * A small score made up from a seed.
 *
 * @param text the score
 * @param sounding ordinals of the notes of part P1 that are no rests
 * @param features what it has of all that a made-up score may have
 */
public record GeneratedScore(String text, List<Integer> sounding, Set<Feature> features) {

    public static GeneratedScore of(long seed) {
        return new ScoreMarkup(seed).write();
    }

    /** Whether MusicXML's schema knows all that it has. */
    public boolean isInSchema() {
        return features.stream().allMatch(Feature::isInSchema);
    }
}
