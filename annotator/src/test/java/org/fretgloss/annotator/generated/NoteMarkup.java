package org.fretgloss.annotator.generated;

import java.util.Map;
import org.fretgloss.annotator.generated.Guitar.Name;
import org.fretgloss.annotator.generated.Tone.Mark;

/** Writes notes, their children in the schema's order. */
final class NoteMarkup {

    /** Where and how a note is written. */
    record Place(int staff, int voice, boolean frets, boolean lyrics) {}

    private static final Map<Integer, String> TYPES =
            Map.of(0, "eighth", 3, "16th", 4, "eighth", 6, "eighth", 12, "quarter", 24, "half");

    private final Dice dice;
    private final Markup out;
    private final Guitar guitar;

    NoteMarkup(Dice dice, Markup out, Guitar guitar) {
        this.dice = dice;
        this.out = out;
        this.guitar = guitar;
    }

    /**
     * Writes a note.
     *
     * @param scale divisions in force, in twelfths of a quarter note
     */
    void write(Tone tone, Place place, int scale) {
        if (tone.has(Mark.FORWARD)) {
            out.element("forward", () -> out.leaf("duration", tone.length() * scale));
        } else {
            out.element("note", attributes(tone), () -> children(tone, place, scale));
        }
    }

    private String attributes(Tone tone) {
        if (dice.has(Feature.STRANGE_VALUE, 8)) {
            return " print-object=\"perhaps\"";
        }
        return tone.has(Mark.HIDDEN) ? " print-object=\"no\"" : dice.oneIn(3) ? " default-x=\"12.5\"" : "";
    }

    private void children(Tone tone, Place place, int scale) {
        if (tone.isGrace()) {
            out.empty("grace", " slash=\"yes\"");
        }
        ifHas(tone, Mark.CUE, () -> out.empty("cue"));
        ifHas(tone, Mark.CHORD, () -> out.empty("chord"));
        sound(tone);
        String type = tone.has(Mark.WHOLE_BAR) ? "" : TYPES.getOrDefault(tone.length(), "");
        boolean timed = !tone.isGrace() && (type.isEmpty() || !dice.has(Feature.DURATION_MISSING, 6));
        if (timed) {
            out.leaf("duration", tone.length() * scale);
        }
        ifHas(tone, Mark.TIE_STOP, () -> out.empty("tie", " type=\"stop\""));
        ifHas(tone, Mark.TIE_START, () -> out.empty("tie", " type=\"start\""));
        if (!dice.has(Feature.VOICE_MISSING, 3)) {
            out.leaf("voice", place.voice());
        }
        if (!type.isEmpty() && !(timed && dice.has(Feature.TYPE_MISSING, 3))) {
            out.leaf("type", type);
        }
        if (tone.triplet() > 0) {
            out.element("time-modification", () -> {
                out.leaf("actual-notes", 3);
                out.leaf("normal-notes", 2);
            });
        }
        ifHas(tone, Mark.DEAD, () -> out.leaf("notehead", "x"));
        if (place.staff() > 0) {
            out.leaf("staff", place.staff());
        }
        if (!tone.isRest()) {
            out.element("notations", () -> notations(tone, place));
            words(place);
        }
    }

    private void sound(Tone tone) {
        if (tone.isRest()) {
            out.empty("rest", tone.has(Mark.WHOLE_BAR) ? " measure=\"yes\"" : "");
        } else if (tone.has(Mark.UNPITCHED)) {
            out.element("unpitched", () -> {
                out.leaf("display-step", "B");
                out.leaf("display-octave", 4);
            });
        } else {
            Name name = guitar.written(tone);
            out.element("pitch", () -> {
                out.leaf("step", name.step());
                if (name.isSharp()) {
                    out.leaf("alter", 1);
                }
                out.leaf("octave", name.octave());
            });
        }
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
        ifHas(tone, Mark.TAP, () -> out.leaf("tap", "T"));
        tone.bends().forEach(bend -> bend.write(out, dice));
        if (place.frets()) {
            out.leaf("string", tone.string());
            out.leaf("fret", tone.fret());
        }
    }

    /** Verses of the score's own, and what follows lyrics in the schema. */
    private void words(Place place) {
        for (int verse = 1; place.lyrics() && verse <= dice.below(4); verse++) {
            String number = dice.oneIn(2) ? " number=\"" + verse + "\"" : "";
            out.element("lyric", number, () -> out.leaf("text", "la & la"));
        }
        if (dice.oneIn(6)) {
            out.element("play", () -> out.leaf("mute", "palm"));
        }
    }

    private static void ifHas(Tone tone, Mark mark, Runnable then) {
        if (tone.has(mark)) {
            then.run();
        }
    }
}
