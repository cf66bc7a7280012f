package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntConsumer;
import java.util.random.RandomGenerator;
import org.fretgloss.annotator.generated.NoteMarkup.Place;

/**
 * A small score made up from a seed.
 *
 * @param text the score
 * @param sounding ordinals of the notes of part P1 that sound
 * @param prefixed whether its elements carry a namespace prefix, which MusicXML's schema does not know
 */
public record GeneratedScore(String text, List<Integer> sounding, boolean prefixed) {

    public static GeneratedScore of(long seed) {
        return new Writer(new SplittableRandom(seed)).score();
    }

    /** How the solo is laid out over parts and staves. */
    private enum Layout {
        TABLATURE,
        NOTATION,
        NOTATION_WITH_FRETS,
        TWO_STAVES,
        TWO_PARTS
    }

    private record Meter(int beats, int beatType) {

        int length() {
            return beats * 4 * Grammar.QUARTER / beatType;
        }
    }

    private static final class Writer {

        private static final List<Layout> LAYOUTS = List.of(Layout.values());
        private static final List<String> KINDS = List.of("dominant", "minor-seventh", "major", "none");
        private static final List<Meter> METERS = List.of(
                new Meter(4, 4), new Meter(3, 4), new Meter(6, 8), new Meter(12, 8), new Meter(5, 4), new Meter(7, 8));

        private final RandomGenerator random;
        private final Markup out;
        private final NoteMarkup noteMarkup;
        private final Layout layout;
        private final Meter meter;
        private final boolean timewise;
        private final boolean pickup;
        private final boolean lyrics;
        private final List<List<Tone>> bars = new ArrayList<>();
        private final List<Integer> sounding = new ArrayList<>();
        private int notes;

        Writer(RandomGenerator random) {
            this.random = random;
            this.out = new Markup(random);
            this.noteMarkup = new NoteMarkup(random, out);
            this.layout = LAYOUTS.get(random.nextInt(LAYOUTS.size()));
            this.meter = METERS.get(random.nextInt(METERS.size()));
            this.timewise = random.nextInt(6) == 0;
            this.pickup = random.nextInt(4) == 0;
            this.lyrics = random.nextInt(3) == 0;
            Grammar grammar = new Grammar(random);
            for (int bar = 0; bar < 2 + random.nextInt(3); bar++) {
                bars.add(grammar.bar(bar == 0 && pickup ? Grammar.QUARTER : meter.length()));
            }
            bars.add(List.of(new Tone(Grammar.QUARTER, 3, 7, 0, List.of())));
        }

        GeneratedScore score() {
            String text = out.document(timewise ? "score-timewise" : "score-partwise", () -> {
                new Head(random, out).write();
                out.element("part-list", () -> parts().forEach(this::part));
                if (timewise) {
                    eachBar(bar -> measure(bar, () -> parts().forEach(id -> inPart(id, () -> content(id, bar)))));
                } else {
                    parts().forEach(id -> inPart(id, () -> eachBar(bar -> measure(bar, () -> content(id, bar)))));
                }
            });
            return new GeneratedScore(text, List.copyOf(sounding), out.isPrefixed());
        }

        private List<String> parts() {
            return layout == Layout.TWO_PARTS ? List.of("P1", "P2") : List.of("P1");
        }

        private void part(String id) {
            out.element(
                    "score-part", " id=\"" + id + "\"", () -> out.leaf("part-name", "Lead \u00E9 & " + parts().size()));
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

        private void content(String part, int bar) {
            boolean tablature = layout == Layout.TABLATURE || (layout == Layout.TWO_PARTS && part.equals("P2"));
            if (bar == 0) {
                attributes(tablature);
            }
            repeat(bar, "left", 1, "forward");
            if (!part.equals("P2")) {
                between(bar);
            }
            boolean frets = tablature || layout == Layout.NOTATION_WITH_FRETS;
            boolean twoStaves = layout == Layout.TWO_STAVES;
            staff(part, bar, new Place(twoStaves ? 1 : 0, 1, frets, lyrics));
            if (twoStaves) {
                int length = bars.get(bar).stream()
                        .filter(tone -> !tone.has(Tone.Mark.CHORD))
                        .mapToInt(Tone::length)
                        .sum();
                out.element("backup", () -> out.leaf("duration", length));
                staff(part, bar, new Place(2, 5, true, false));
            }
            repeat(bar, "right", bars.size() - 1, "backward");
        }

        private void attributes(boolean tablature) {
            out.element("attributes", () -> {
                out.leaf("divisions", Grammar.QUARTER);
                out.element("key", () -> out.leaf("fifths", random.nextInt(5) - 2));
                out.element("time", () -> {
                    out.leaf("beats", meter.beats());
                    out.leaf("beat-type", meter.beatType());
                });
                if (layout == Layout.TWO_STAVES) {
                    out.leaf("staves", 2);
                    clef(" number=\"1\"", "G", 2);
                    clef(" number=\"2\"", "TAB", 5);
                } else if (tablature) {
                    clef("", "TAB", 5);
                } else {
                    clef("", "G", 2);
                }
            });
        }

        private void clef(String attributes, String sign, int line) {
            out.element("clef", attributes, () -> {
                out.leaf("sign", sign);
                out.leaf("line", line);
            });
        }

        /** Chord symbols, words and tempo before the notes. */
        private void between(int bar) {
            if (bar == 0 || random.nextInt(3) == 0) {
                out.element("harmony", () -> {
                    out.element("root", () -> out.leaf("root-step", bar % 2 == 0 ? "A" : "D"));
                    out.leaf(
                            "kind", random.nextBoolean() ? " text=\"7\"" : "", KINDS.get(random.nextInt(KINDS.size())));
                });
            }
            if (random.nextInt(4) == 0) {
                out.element("direction", () -> {
                    out.element("direction-type", () -> out.leaf("words", "with <feeling>"));
                    out.empty("sound", " tempo=\"96\"");
                });
            }
        }

        private void repeat(int bar, String location, int where, String direction) {
            if (bar == where && notes % 2 == 0 && bars.size() > 3) {
                out.element(
                        "barline",
                        " location=\"" + location + "\"",
                        () -> out.empty("repeat", " direction=\"" + direction + "\""));
            }
        }

        private void staff(String part, int bar, Place place) {
            for (Tone tone : bars.get(bar)) {
                notes++;
                if (part.equals("P1") && !tone.isRest()) {
                    sounding.add(notes);
                }
                noteMarkup.write(tone, place);
            }
        }
    }
}
