package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import org.fretgloss.annotator.generated.NoteMarkup.Place;

/** Writes a whole score: its parts, their bars, and in them the notes of each staff. */
final class ScoreMarkup {

    private static final List<Integer> DIVISIONS = List.of(1, 2, 5, 10);

    private final Dice dice;
    private final Markup out;
    private final Layout layout;
    private final List<Bar> bars;
    private final NoteMarkup notes;
    private final HarmonyMarkup harmonies;
    private final Signs signs;
    private final RoadMarkup road;
    private final boolean timewise;
    private final boolean pickup;
    private final boolean lyrics;
    private final boolean chordsApart;
    private final Map<String, Integer> scales = new HashMap<>();
    private final List<Integer> sounding = new ArrayList<>();
    private int written;

    ScoreMarkup(long seed) {
        this.dice = new Dice(seed);
        this.out = new Markup(dice);
        this.layout = Layout.of(dice);
        this.bars = new Grammar(dice).bars();
        Guitar guitar = Guitar.of(dice);
        this.notes = new NoteMarkup(dice, out, guitar);
        this.harmonies = new HarmonyMarkup(dice, out);
        this.signs = new Signs(dice, out, layout, guitar);
        this.road = new RoadMarkup(dice, out, bars.size());
        this.timewise = dice.has(Feature.TIMEWISE);
        this.pickup = dice.has(Feature.PICK_UP);
        this.lyrics = dice.has(Feature.LYRICS);
        this.chordsApart = dice.has(Feature.CHORDS_IN_ANOTHER_PART);
    }

    GeneratedScore write() {
        List<String> parts = layout.parts(chordsApart);
        String text = out.document(timewise ? "score-timewise" : "score-partwise", () -> {
            new Head(dice, out).write();
            out.element("part-list", () -> parts.forEach(id -> part(id, parts.size())));
            if (timewise) {
                eachBar(bar -> measure(bar, () -> parts.forEach(id -> inPart(id, () -> content(id, bar)))));
            } else {
                parts.forEach(id -> inPart(id, () -> eachBar(bar -> measure(bar, () -> content(id, bar)))));
            }
        });
        return new GeneratedScore(text, List.copyOf(sounding), dice.seen());
    }

    private void part(String id, int parts) {
        out.element(
                "score-part",
                " id=\"" + id + "\"",
                () -> out.leaf("part-name", id.equals(Layout.CHORDS) ? "Rhythm" : "Lead \u00E9 & " + parts));
    }

    private void eachBar(IntConsumer write) {
        for (int bar = 0; bar < bars.size(); bar++) {
            write.accept(bar);
        }
    }

    private void inPart(String id, Runnable content) {
        out.element("part", " id=\"" + id + "\"", content);
    }

    private void measure(int bar, Runnable content) {
        int number = pickup ? bar : bar + 1;
        out.element("measure", " number=\"" + number + "\"" + (number == 0 ? " implicit=\"yes\"" : ""), content);
    }

    private void content(String part, int number) {
        Bar bar = bars.get(number);
        road.left(number);
        if (number == 0) {
            signs.atStart(part, bar);
        } else {
            signs.atBar(bar);
        }
        boolean hasChords = part.equals(chordsApart ? Layout.CHORDS : "P1");
        if (hasChords && (number == 0 || dice.oneIn(3))) {
            harmonies.write(number % 2 == 0 ? "A" : "D");
        }
        if (part.equals(Layout.CHORDS)) {
            written++;
            notes.write(Tone.rest(bar.length(), Tone.Mark.WHOLE_BAR), new Place(0, 1, false, false), 1);
        } else {
            solo(part, bar);
        }
        road.right(number);
    }

    private void solo(String part, Bar bar) {
        words();
        changeDivisions(part, 4);
        List<Place> places = layout.places(part, lyrics);
        for (int i = 0; i < places.size(); i++) {
            if (i > 0) {
                out.element("backup", () -> out.leaf("duration", bar.length() * scale(part)));
            }
            for (Tone tone : bar.tones()) {
                if (places.size() == 1 && !tone.has(Tone.Mark.CHORD)) {
                    changeDivisions(part, 10);
                }
                tone(part, tone, places.get(i));
            }
        }
    }

    private void tone(String part, Tone tone, Place place) {
        if (!tone.has(Tone.Mark.FORWARD)) {
            written++;
        }
        if (part.equals("P1") && !tone.isRest()) {
            sounding.add(written);
        }
        notes.write(tone, place, scale(part));
    }

    private int scale(String part) {
        return scales.getOrDefault(part, 1);
    }

    private void changeDivisions(String part, int places) {
        if (dice.has(Feature.DIVISIONS_CHANGE, places)) {
            scales.put(part, dice.oneOf(DIVISIONS));
            signs.divisions(Grammar.QUARTER * scale(part));
        }
    }

    /** Words and tempo before the notes. */
    private void words() {
        if (dice.oneIn(4)) {
            out.element("direction", () -> {
                out.element("direction-type", () -> out.leaf("words", "with <feeling>"));
                out.empty("sound", " tempo=\"96\"");
            });
        }
    }
}
