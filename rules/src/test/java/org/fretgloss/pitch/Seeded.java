package org.fretgloss.pitch;

import java.util.List;
import java.util.Random;

/** Draws music at random, the same for the same seed. */
public final class Seeded {

    private final Random random;

    public Seeded(long seed) {
        this.random = new Random(seed);
    }

    public int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    public boolean once(int in) {
        return random.nextInt(in) == 0;
    }

    public <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** A note name with at most one accidental. */
    public PitchClass note() {
        return new PitchClass(of(List.of(Step.values())), between(-1, 1));
    }

    /** A pitch on the piano's keys, spelled with at most one accidental. */
    public Pitch pitch() {
        return new Pitch(note(), between(1, 7));
    }
}
