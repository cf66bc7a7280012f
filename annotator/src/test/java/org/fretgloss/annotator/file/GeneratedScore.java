package org.fretgloss.annotator.file;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * A small score made up from a seed, in the many ways in which programs lay scores out: line ends, indentation, one
 * line, prefixes, comments, processing instructions, CDATA, lyrics of its own, a head that is there, empty or missing.
 *
 * @param text the score
 * @param sounding ordinals of the notes of part P1 that sound
 * @param prefixed whether its elements carry a namespace prefix, which MusicXML's schema does not know
 */
public record GeneratedScore(String text, List<Integer> sounding, boolean prefixed) {

    public static GeneratedScore of(long seed) {
        return new Writer(new SplittableRandom(seed)).score();
    }

    private static final class Writer {

        private final RandomGenerator random;
        private final String lineEnd;
        private final String unit;
        private final String prefix;
        private final boolean cluttered;
        private final StringBuilder out = new StringBuilder();
        private final List<Integer> sounding = new ArrayList<>();
        private int depth;
        private int notes;

        Writer(RandomGenerator random) {
            this.random = random;
            this.lineEnd = oneOf("\n", "\r\n", "\r", "");
            this.unit = lineEnd.isEmpty() ? "" : oneOf("", " ", "  ", "    ", "\t");
            this.prefix = random.nextInt(6) == 0 ? "m:" : "";
            this.cluttered = random.nextBoolean();
        }

        GeneratedScore score() {
            out.append("<?xml version=\"1.0\"?>").append(lineEnd);
            if (random.nextBoolean()) {
                out.append("<!DOCTYPE ")
                        .append(prefix)
                        .append("score-partwise [<!-- <note> -->]>")
                        .append(lineEnd);
            }
            String namespace = prefix.isEmpty() ? "" : " xmlns:m=\"urn:example\"";
            open("score-partwise", namespace + " version=\"4.0\"", true);
            head();
            open("part-list", "", false);
            part("P1");
            part("P2");
            close("part-list");
            music("P1");
            music("P2");
            close("score-partwise");
            out.append(oneOf("", lineEnd, "<!-- end -->"));
            return new GeneratedScore(out.toString(), List.copyOf(sounding), !prefix.isEmpty());
        }

        private void head() {
            if (random.nextBoolean()) {
                leaf("movement-title", "", oneOf("Slow One", "a &amp; b", "<![CDATA[<note>]]>"));
            }
            switch (random.nextInt(6)) {
                case 0 -> empty("identification");
                case 1 -> identified(() -> {});
                case 2 -> identified(() -> leaf("rights", "", "none"));
                case 3 -> identified(() -> empty("miscellaneous"));
                case 4 ->
                    identified(() -> {
                        open("miscellaneous", "", false);
                        leaf("miscellaneous-field", " name=\"mood\"", "blue");
                        close("miscellaneous");
                    });
                default -> {
                    // No identification at all.
                }
            }
        }

        private void identified(Runnable content) {
            open("identification", "", false);
            content.run();
            close("identification");
        }

        private void part(String id) {
            open("score-part", " id=\"" + id + "\"", false);
            leaf("part-name", "", "Lead");
            close("score-part");
        }

        private void music(String id) {
            open("part", " id=\"" + id + "\"", false);
            for (int bar = 1; bar <= 1 + random.nextInt(3); bar++) {
                open("measure", " number=\"" + bar + "\"", false);
                for (int i = random.nextInt(5); i >= 0; i--) {
                    note(id);
                }
                close("measure");
            }
            close("part");
        }

        private void note(String part) {
            notes++;
            boolean rest = random.nextInt(5) == 0;
            open("note", oneOf("", "", " default-x=\"12.5\""), false);
            if (rest) {
                empty("rest");
            } else {
                open("pitch", "", false);
                leaf("step", "", oneOf("A", "C", "E"));
                leaf("octave", "", "4");
                close("pitch");
                if (part.equals("P1")) {
                    sounding.add(notes);
                }
            }
            leaf("duration", "", "1");
            leaf("voice", "", "1");
            for (int verse = 1; !rest && verse <= random.nextInt(4); verse++) {
                open("lyric", oneOf("", " number=\"" + verse + "\"", " name=\"verse\""), false);
                leaf("text", "", "la");
                close("lyric");
            }
            if (!rest && random.nextInt(4) == 0) {
                open("play", "", false);
                leaf("mute", "", "palm");
                close("play");
            }
            close("note");
        }

        private void open(String name, String attributes, boolean root) {
            if (!root) {
                newLine();
            }
            out.append('<')
                    .append(prefix)
                    .append(name)
                    .append(attributes)
                    .append(oneOf("", "", " "))
                    .append('>');
            depth++;
        }

        private void close(String name) {
            clutter();
            depth--;
            newLine();
            out.append("</").append(prefix).append(name).append('>');
        }

        private void leaf(String name, String attributes, String text) {
            clutter();
            newLine();
            out.append('<')
                    .append(prefix)
                    .append(name)
                    .append(attributes)
                    .append('>')
                    .append(text);
            out.append("</")
                    .append(prefix)
                    .append(name)
                    .append(oneOf("", "", " "))
                    .append('>');
        }

        private void empty(String name) {
            newLine();
            out.append('<').append(prefix).append(name).append(oneOf("", " ")).append("/>");
        }

        private void clutter() {
            if (cluttered && random.nextInt(8) == 0) {
                newLine();
                out.append(oneOf("<!-- <note>\uD834\uDD1E -->", "<?keep <lyric/> ?>", "<!---->"));
            }
        }

        private void newLine() {
            out.append(lineEnd).append(unit.repeat(depth));
        }

        private String oneOf(String... choices) {
            return choices[random.nextInt(choices.length)];
        }
    }
}
