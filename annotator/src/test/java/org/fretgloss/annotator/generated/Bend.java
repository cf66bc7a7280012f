package org.fretgloss.annotator.generated;

/**
 * One element of a bend's course.
 *
 * @param alter in semitones, or what an exporter takes them for
 * @param kind the element's child that says what it does besides bending upward; may be empty
 */
record Bend(String alter, String kind) {

    static Bend up(String alter) {
        return new Bend(alter, "");
    }

    void write(Markup out, Dice dice) {
        String shape = dice.has(Feature.STRANGE_VALUE, 3) ? " shape=\"wobbly\"" : dice.oneOf("", " shape=\"curved\"");
        out.element("bend", shape, () -> {
            out.leaf("bend-alter", alter);
            if (!kind.isEmpty()) {
                out.empty(kind);
            }
        });
    }
}
