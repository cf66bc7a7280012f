package org.fretgloss.annotator.generated;

import org.fretgloss.annotator.generated.Bar.Meter;
import org.fretgloss.annotator.generated.Guitar.Name;

/** Writes what stands at the start of a staff: divisions, key, meter, clefs, tuning, transposition. */
final class Signs {

    private final Dice dice;
    private final Markup out;
    private final Layout layout;
    private final Guitar guitar;
    private final boolean transposes;
    private final boolean declaresDivisions;

    Signs(Dice dice, Markup out, Layout layout, Guitar guitar) {
        this.dice = dice;
        this.out = out;
        this.layout = layout;
        this.guitar = guitar;
        this.transposes = dice.has(Feature.TRANSPOSITION);
        this.declaresDivisions = !dice.has(Feature.DIVISIONS_MISSING);
    }

    void atStart(String part, Bar bar) {
        out.element("attributes", () -> {
            if (declaresDivisions) {
                out.leaf("divisions", Grammar.QUARTER);
            }
            out.element("key", () -> out.leaf("fifths", dice.below(5) - 2));
            time(bar.meter());
            if (part.equals(Layout.CHORDS)) {
                return;
            }
            staves(part);
            if (transposes) {
                out.element("transpose", () -> {
                    out.leaf("diatonic", 0);
                    out.leaf("chromatic", 0);
                    out.leaf("octave-change", -1);
                });
            }
        });
    }

    void atBar(Bar bar) {
        if (bar.changesMeter()) {
            out.element("attributes", () -> time(bar.meter()));
        }
        if (bar.restBars() > 0) {
            out.element(
                    "attributes", () -> out.element("measure-style", () -> out.leaf("multiple-rest", bar.restBars())));
        }
    }

    void divisions(int divisions) {
        out.element("attributes", () -> out.leaf("divisions", divisions));
    }

    private void time(Meter meter) {
        out.element("time", () -> {
            out.leaf("beats", meter.beats());
            out.leaf("beat-type", meter.beatType());
        });
    }

    private void staves(String part) {
        boolean two = layout == Layout.TWO_STAVES;
        if (two) {
            out.leaf("staves", 2);
        }
        if (!layout.isTablature(part)) {
            clef(two ? " number=\"1\"" : "", "G", 2);
        }
        if (two || layout.isTablature(part)) {
            String number = two ? " number=\"2\"" : "";
            clef(number, "TAB", 5);
            details(number);
        }
    }

    private void clef(String number, String sign, int line) {
        out.element("clef", number, () -> {
            out.leaf("sign", sign);
            out.leaf("line", line);
            if (sign.equals("G") && dice.has(Feature.OCTAVE_CLEF)) {
                out.leaf("clef-octave-change", -1);
            }
        });
    }

    /** The tuning, which some leave out even where it is another; the capo without a tuning is possible too. */
    private void details(String number) {
        if (guitar.isPlain() && dice.oneIn(2)) {
            return;
        }
        out.element("staff-details", number, () -> {
            int strings = guitar.open().size();
            out.leaf("staff-lines", strings);
            if (dice.oneIn(4)) {
                return;
            }
            for (int line = 1; line <= strings; line++) {
                tuning(line, guitar.openString(strings + 1 - line));
            }
            if (guitar.capo() > 0) {
                out.leaf("capo", guitar.capo());
            }
        });
    }

    private void tuning(int line, Name name) {
        out.element("staff-tuning", " line=\"" + line + "\"", () -> {
            out.leaf("tuning-step", name.step());
            if (name.isSharp()) {
                out.leaf("tuning-alter", 1);
            }
            out.leaf("tuning-octave", name.octave());
        });
    }
}
