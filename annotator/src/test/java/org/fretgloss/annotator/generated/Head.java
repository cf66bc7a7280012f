package org.fretgloss.annotator.generated;

/** Writes titles and identification: there, empty or missing. */
final class Head {

    private final Dice dice;
    private final Markup out;

    Head(Dice dice, Markup out) {
        this.dice = dice;
        this.out = out;
    }

    void write() {
        if (dice.oneIn(2)) {
            out.leaf("movement-title", dice.oneIn(2) ? "Slow One" : "a & <note> b");
        }
        switch (dice.below(6)) {
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
