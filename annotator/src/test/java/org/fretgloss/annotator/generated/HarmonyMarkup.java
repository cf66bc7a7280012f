package org.fretgloss.annotator.generated;

/** Writes chord symbols: roots and kinds, with degrees, bass notes, frames and offsets. */
final class HarmonyMarkup {

    private final Dice dice;
    private final Markup out;

    HarmonyMarkup(Dice dice, Markup out) {
        this.dice = dice;
        this.out = out;
    }

    void write(String root) {
        out.element("harmony", () -> {
            out.element("root", () -> out.leaf("root-step", root));
            kind();
            if (dice.has(Feature.CHORD_BASS, 2)) {
                out.element("bass", () -> out.leaf("bass-step", "E"));
            }
            if (dice.has(Feature.CHORD_DEGREE, 2)) {
                degree();
            }
            if (dice.has(Feature.FRAME, 2)) {
                frame();
            }
            if (dice.has(Feature.CHORD_OFFSET, 2)) {
                out.leaf("offset", Grammar.QUARTER);
            }
        });
    }

    private void kind() {
        String kind = dice.has(Feature.STRANGE_VALUE, 2)
                ? "somewhat-blue"
                : dice.has(Feature.KIND_OTHER, 2)
                        ? "other"
                        : dice.oneOf(
                                "dominant", "minor-seventh", "major", "none", "dominant-ninth", "suspended-fourth");
        out.leaf("kind", dice.oneOf("", " text=\"7\"", " use-symbols=\"yes\""), kind);
    }

    private void degree() {
        out.element("degree", () -> {
            out.leaf("degree-value", dice.oneOf("5", "9", "13"));
            out.leaf("degree-alter", dice.oneOf("-1", "0", "1"));
            out.leaf("degree-type", dice.oneOf("add", "alter", "subtract"));
        });
    }

    /** A7 as it is played at the fifth fret. */
    private void frame() {
        out.element("frame", () -> {
            out.leaf("frame-strings", 6);
            out.leaf("frame-frets", 4);
            out.leaf("first-fret", "", "5");
            int[] frets = {1, 3, 1, 2, 1, 1};
            for (int string = frets.length; string > 0; string--) {
                frameNote(string, frets[frets.length - string]);
            }
        });
    }

    private void frameNote(int string, int fret) {
        out.element("frame-note", () -> {
            out.leaf("string", string);
            out.leaf("fret", fret);
        });
    }
}
