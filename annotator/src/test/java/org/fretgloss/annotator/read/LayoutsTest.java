package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.pitch;
import static org.fretgloss.annotator.read.Scores.place;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.score;
import static org.fretgloss.annotator.read.Scores.tabClef;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same music, written in the ways in which programs write it, is the same solo. */
class LayoutsTest {

    /**
     * A note of a made-up solo.
     *
     * @param length in twelfths of a quarter
     * @param places where it is struck; none is a rest, two a double stop
     * @param tied whether it is tied to the next, which is at the same places
     */
    private record Struck(int length, List<StringFret> places, boolean tied) {}

    private static final int BAR = 48;

    static List<Integer> seeds() {
        List<Integer> seeds = new ArrayList<>();
        new Random(1).ints(40).forEach(seeds::add);
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void tablatureAlone(int seed) throws ScoreException {
        List<Struck> solo = solo(seed);
        String beginning = attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING));
        assertThat(described(partwise(beginning, bars(solo, 0, true, 1)))).isEqualTo(expected(solo));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void notationAnOctaveHighWithFrets(int seed) throws ScoreException {
        List<Struck> solo = solo(seed);
        String beginning = attributes(FOUR_FOUR + details("", STANDARD_TUNING));
        assertThat(described(partwise(beginning, bars(solo, 1, true, 1)))).isEqualTo(expected(solo));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void notationWithTablatureBelow(int seed) throws ScoreException {
        List<Struck> solo = solo(seed);
        String beginning =
                attributes(FOUR_FOUR + "<staves>2</staves>" + tabClef(2) + details("number=\"2\"", STANDARD_TUNING));
        String[] notation = bars(solo, 1, false, 1);
        String[] tablature = bars(solo, 0, true, 2);
        for (int i = 0; i < notation.length; i++) {
            notation[i] += backup(BAR) + tablature[i];
        }
        assertThat(described(partwise(beginning, notation))).isEqualTo(expected(solo));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void notationAndTablatureInTwoParts(int seed) throws ScoreException {
        List<Struck> solo = solo(seed);
        String tablature = attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING));
        String score = score(
                part("Notation", attributes(FOUR_FOUR), bars(solo, 1, false, 1)),
                part("Tablature", tablature, bars(solo, 0, true, 1)));
        assertThat(described(score)).isEqualTo(expected(solo));
        assertThat(read(score).solo().part().name()).isEqualTo("Notation");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void barByBarInsteadOfPartByPart(int seed) throws ScoreException {
        List<Struck> solo = solo(seed);
        String[] bars = bars(solo, 0, true, 1);
        StringBuilder timewise = new StringBuilder(
                "<score-timewise><part-list><score-part id=\"P1\"><part-name/></score-part></part-list>");
        for (int i = 0; i < bars.length; i++) {
            String beginning = i == 0 ? attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING)) : "";
            timewise.append(
                    "<measure number=\"%d\"><part id=\"P1\">%s</part></measure>".formatted(i + 1, beginning + bars[i]));
        }
        assertThat(described(timewise + "</score-timewise>")).isEqualTo(expected(solo));
    }

    /** Lengths that fill bars, so that no length crosses a bar line. */
    private static List<Struck> solo(int seed) {
        Random random = new Random(seed);
        List<Struck> solo = new ArrayList<>();
        for (int bar = 0; bar < 6; bar++) {
            int left = BAR;
            while (left > 0) {
                int[] lengths = {3, 4, 6, 8, 12, 18, 24};
                int length = Math.min(left, lengths[random.nextInt(lengths.length)]);
                left -= length;
                Struck before = solo.isEmpty() ? new Struck(0, List.of(), false) : solo.get(solo.size() - 1);
                List<StringFret> places = before.tied ? before.places : places(random);
                solo.add(new Struck(length, places, !places.isEmpty() && random.nextInt(6) == 0));
            }
        }
        solo.add(new Struck(BAR, List.of(new StringFret(1, 3)), false));
        Struck before = solo.get(solo.size() - 2);
        solo.set(solo.size() - 2, new Struck(before.length, before.places, false));
        return solo;
    }

    private static List<StringFret> places(Random random) {
        int string = 1 + random.nextInt(5);
        StringFret place = new StringFret(string, random.nextInt(18));
        return switch (random.nextInt(6)) {
            case 0 -> List.of();
            case 1 -> List.of(new StringFret(string + 1, random.nextInt(18)), place);
            default -> List.of(place);
        };
    }

    private static String[] bars(List<Struck> solo, int octaves, boolean frets, int staff) {
        List<String> bars = new ArrayList<>();
        StringBuilder bar = new StringBuilder();
        int filled = 0;
        boolean tied = false;
        for (Struck struck : solo) {
            bar.append(written(struck, tied, octaves, frets, staff));
            tied = struck.tied;
            filled += struck.length;
            if (filled % BAR == 0) {
                bars.add(bar.toString());
                bar.setLength(0);
            }
        }
        return bars.toArray(String[]::new);
    }

    private static String written(Struck struck, boolean tied, int octaves, boolean frets, int staff) {
        if (struck.places.isEmpty()) {
            return rest(struck.length).replace("</note>", "<staff>" + staff + "</staff></note>");
        }
        String ties = (tied ? "<tie type=\"stop\"/>" : "") + (struck.tied ? "<tie type=\"start\"/>" : "");
        StringBuilder text = new StringBuilder();
        for (StringFret at : struck.places) {
            Pitch pitch = Pitch.ofMidi(Tuning.STANDARD.midi(at)).octavesUp(octaves);
            String note = element(
                    pitch(pitch) + length(struck.length) + ties + "<staff>" + staff + "</staff>",
                    frets ? place(at.string(), at.fret()) : "",
                    "");
            text.append(text.isEmpty() ? note : inChord(note));
        }
        return text.toString();
    }

    /** What should sound, by the made-up solo itself: onset, length, sound and place of every note. */
    private static List<String> expected(List<Struck> solo) {
        List<String> expected = new ArrayList<>();
        int now = 0;
        for (int i = 0; i < solo.size(); i++) {
            boolean goesOn = i > 0 && solo.get(i - 1).tied;
            int length = solo.get(i).length;
            for (int j = i; solo.get(j).tied; j++) {
                length += solo.get(j + 1).length;
            }
            for (StringFret at : goesOn ? List.<StringFret>of() : solo.get(i).places) {
                expected.add(description(Fraction.of(now, 12), Fraction.of(length, 12), Tuning.STANDARD.midi(at), at));
            }
            now += solo.get(i).length;
        }
        return expected;
    }

    private static List<String> described(String score) throws ScoreException {
        List<String> described = new ArrayList<>();
        for (Note note : notes(score)) {
            described.add(description(
                    note.onset(), note.duration(), note.midi(), note.at().orElseThrow()));
        }
        return described;
    }

    private static String description(Fraction onset, Fraction duration, int midi, StringFret at) {
        return onset + " for " + duration + ": " + midi + " at " + at;
    }
}
