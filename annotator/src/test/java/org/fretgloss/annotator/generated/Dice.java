package org.fretgloss.annotator.generated;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * All chance of one score. A score draws the features it may have first, so that each feature meets many others and
 * misses them as often, and then rolls for each at every place where it could stand.
 */
final class Dice {

    /** A feature may stand in one score of so many; more seldom what makes the whole score invalid. */
    private static final int FEATURE_EVERY = 4;

    private static final int OUTSIDE_SCHEMA_EVERY = 10;

    private final RandomGenerator random;
    private final Set<Feature> drawn = EnumSet.noneOf(Feature.class);
    private final Set<Feature> seen = EnumSet.noneOf(Feature.class);

    Dice(long seed) {
        this.random = new SplittableRandom(seed);
        for (Feature feature : Feature.values()) {
            if (oneIn(feature.isInSchema() ? FEATURE_EVERY : OUTSIDE_SCHEMA_EVERY)) {
                drawn.add(feature);
            }
        }
    }

    /** Whether a feature may stand in the score, whether or not it does in the end. */
    boolean mayHave(Feature feature) {
        return drawn.contains(feature);
    }

    /** Whether the score has a feature as a whole. */
    boolean has(Feature feature) {
        return has(feature, 1);
    }

    /** Whether a feature stands here, as it does in one place of so many. Whoever asks must then write it. */
    boolean has(Feature feature, int places) {
        boolean stands = drawn.contains(feature) && oneIn(places);
        if (stands) {
            seen.add(feature);
        }
        return stands;
    }

    /** What the score turned out to have. */
    Set<Feature> seen() {
        return Collections.unmodifiableSet(seen);
    }

    boolean oneIn(int places) {
        return random.nextInt(places) == 0;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    String oneOf(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
