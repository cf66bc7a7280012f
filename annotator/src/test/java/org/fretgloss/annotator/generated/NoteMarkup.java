package org.fretgloss.annotator.generated;

import java.util.Map;
import java.util.random.RandomGenerator;
import org.fretgloss.annotator.generated.Tone.Mark;

/** Writes notes, their children in the schema's order. */
final class NoteMarkup {

    /** Where and how a note is written. */
    record Place(int staff, int voice, boolean frets, boolean lyrics) {}

    private static final Map<Integer, String> TYPES =
            Map.of(0, "eighth", 3, "16th", 4, "eighth", 6, "eighth", 12, "quarter", 24, "half");

    private final RandomGenerator random;
    private final Markup out;

    NoteMarkup(RandomGenerator random, Markup out) {
        this.random = random;
        this.out = out;
    }

    void write(Tone tone, Place place) {
        out.element("note", random.nextInt(3) == 0 ? " default-x=\"12.5\"" : "", () -> children(tone, place));
    }

    private void children(Tone tone, Place place) {
        if (tone.isGrace()) {
            out.empty("grace", " slash=\"yes\"");
        }
        if (tone.has(Mark.CHORD)) {
            out.empty("chord");
        }
        if (tone.isRest()) {
            out.empty("rest");
        } else {
            out.element("pitch", () -> pitch(tone));
        }
        if (!tone.isGrace()) {
            out.leaf("duration", tone.length());
        }
        ifHas(tone, Mark.TIE_STOP, () -> out.empty("tie", " type=\"stop\""));
        ifHas(tone, Mark.TIE_START, () -> out.empty("tie", " type=\"start\""));
        out.leaf("voice", place.voice());
        if (TYPES.containsKey(tone.length())) {
            out.leaf("type", TYPES.get(tone.length()));
        }
        if (tone.triplet() > 0) {
            out.element("time-modification", () -> {
                out.leaf("actual-notes", 3);
                out.leaf("normal-notes", 2);
            });
        }
        if (place.staff() > 0) {
            out.leaf("staff", place.staff());
        }
        if (!tone.isRest()) {
            out.element("notations", () -> notations(tone, place));
            words(place);
        }
    }

    private void pitch(Tone tone) {
        out.leaf("step", tone.step());
        if (tone.isSharp()) {
            out.leaf("alter", 1);
        }
        out.leaf("octave", tone.octave());
    }

    private void notations(Tone tone, Place place) {
        ifHas(tone, Mark.TIE_STOP, () -> out.empty("tied", " type=\"stop\""));
        ifHas(tone, Mark.TIE_START, () -> out.empty("tied", " type=\"start\""));
        if (tone.triplet() == 1) {
            out.empty("tuplet", " type=\"start\" bracket=\"no\"");
        } else if (tone.triplet() == 3) {
            out.empty("tuplet", " type=\"stop\"");
        }
        ifHas(tone, Mark.SLIDE_START, () -> out.empty("slide", " type=\"start\" number=\"1\""));
        ifHas(tone, Mark.SLIDE_STOP, () -> out.empty("slide", " type=\"stop\" number=\"1\""));
        ifHas(
                tone,
                Mark.VIBRATO,
                () -> out.element("ornaments", () -> {
                    out.empty("wavy-line", " type=\"start\"");
                    out.empty("wavy-line", " type=\"stop\"");
                }));
        out.element("technical", () -> technical(tone, place));
    }

    private void technical(Tone tone, Place place) {
        ifHas(tone, Mark.HAMMER_START, () -> out.leaf("hammer-on", " type=\"start\"", "H"));
        ifHas(tone, Mark.HAMMER_STOP, () -> out.empty("hammer-on", " type=\"stop\""));
        ifHas(tone, Mark.PULL_START, () -> out.leaf("pull-off", " type=\"start\"", "P"));
        ifHas(tone, Mark.PULL_STOP, () -> out.empty("pull-off", " type=\"stop\""));
        ifHas(tone, Mark.HARMONIC, () -> out.element("harmonic", () -> out.empty("natural")));
        ifHas(tone, Mark.BEND, () -> bend(out, "2"));
        ifHas(tone, Mark.BEND_RELEASE, () -> {
            bend(out, "2");
            bend(out, "-2", "release");
        });
        ifHas(tone, Mark.BEND_TO_HEIGHT, () -> {
            bend(out, "1");
            bend(out, "0", "release");
        });
        ifHas(tone, Mark.PRE_BEND, () -> bend(out, "2", "pre-bend"));
        ifHas(tone, Mark.BAR_DIP, () -> bend(out, "-2", "with-bar"));
        if (place.frets()) {
            out.leaf("string", tone.string());
            out.leaf("fret", tone.fret());
        }
    }

    private static void bend(Markup out, String alter, String... kinds) {
        out.element("bend", () -> {
            out.leaf("bend-alter", alter);
            for (String kind : kinds) {
                out.empty(kind);
            }
        });
    }

    /** Verses of the score's own, and what follows lyrics in the schema. */
    private void words(Place place) {
        for (int verse = 1; place.lyrics() && verse <= random.nextInt(4); verse++) {
            String number = random.nextBoolean() ? " number=\"" + verse + "\"" : "";
            out.element("lyric", number, () -> out.leaf("text", "la & la"));
        }
        if (random.nextInt(6) == 0) {
            out.element("play", () -> out.leaf("mute", "palm"));
        }
    }

    private static void ifHas(Tone tone, Mark mark, Runnable then) {
        if (tone.has(mark)) {
            then.run();
        }
    }
}
