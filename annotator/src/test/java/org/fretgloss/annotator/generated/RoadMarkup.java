package org.fretgloss.annotator.generated;

/** Writes bar lines that send the player back: a repeat of all bars but the last, perhaps with two endings. */
final class RoadMarkup {

    private final Markup out;
    private final int lastBar;
    private final boolean repeats;
    private final boolean ends;

    RoadMarkup(Dice dice, Markup out, int bars) {
        this.out = out;
        this.lastBar = bars - 1;
        this.ends = bars > 2 && dice.has(Feature.ENDINGS);
        this.repeats = ends || dice.has(Feature.REPEAT);
    }

    void left(int bar) {
        if (repeats && bar == 0) {
            out.element("barline", " location=\"left\"", () -> {
                out.leaf("bar-style", "heavy-light");
                out.empty("repeat", " direction=\"forward\"");
            });
        }
        if (ends && bar >= lastBar - 1) {
            ending("left", bar, "start", false);
        }
    }

    void right(int bar) {
        if (ends && bar >= lastBar - 1) {
            ending("right", bar, bar == lastBar ? "discontinue" : "stop", bar < lastBar);
        } else if (repeats && !ends && bar == lastBar - 1) {
            out.element("barline", " location=\"right\"", () -> out.empty("repeat", " direction=\"backward\""));
        }
    }

    private void ending(String location, int bar, String type, boolean goesBack) {
        int number = bar == lastBar ? 2 : 1;
        out.element("barline", " location=\"" + location + "\"", () -> {
            out.empty("ending", " number=\"" + number + "\" type=\"" + type + "\"");
            if (goesBack) {
                out.empty("repeat", " direction=\"backward\"");
            }
        });
    }
}
