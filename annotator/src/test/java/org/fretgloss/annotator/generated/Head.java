package org.fretgloss.annotator.generated;

import java.util.random.RandomGenerator;

/** Writes titles and identification: there, empty or missing. */
final class Head {

    private final RandomGenerator random;
    private final Markup out;

    Head(RandomGenerator random, Markup out) {
        this.random = random;
        this.out = out;
    }

    void write() {
        if (random.nextBoolean()) {
            out.leaf("movement-title", random.nextBoolean() ? "Slow One" : "a & <note> b");
        }
        switch (random.nextInt(6)) {
            case 0 -> out.empty("identification");
            case 1 -> out.element("identification", () -> {});
            case 2 -> out.element("identification", () -> out.leaf("rights", "none"));
            case 3 -> out.element("identification", () -> out.empty("miscellaneous"));
            case 4 ->
                out.element(
                        "identification",
                        () -> out.element(
                                "miscellaneous", () -> out.leaf("miscellaneous-field", " name=\"mood\"", "blue")));
            default -> {
                // No identification at all.
            }
        }
    }
}
