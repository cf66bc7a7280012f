package org.fretgloss.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Scale;
import org.fretgloss.pitch.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class BoxLayoutTest {

    private static final Tuning DROP_D = Tuning.of("E4 B3 G3 D3 A2 D2");

    /** All twelve keys, five boxes each: common practice, frets per string. */
    @ParameterizedTest
    @CsvFileSource(resources = "minor-pentatonic-boxes.csv", numLinesToSkip = 3)
    void standardTuningHasTheShapesOfEveryMethod(
            String tonic,
            int number,
            int lowest,
            int highest,
            String s6,
            String s5,
            String s4,
            String s3,
            String s2,
            String s1) {
        String frets = String.join(" ", s6, s5, s4, s3, s2, s1);
        assertThat(layout(Tuning.STANDARD, tonic))
                .contains("box " + number + " fr" + lowest + "-" + highest + ": " + frets);
    }

    @Test
    void theBoxesOfAFillTheNeck() {
        assertThat(layout(Tuning.STANDARD, "A"))
                .containsExactly(
                        "box 4 fr0-3: 0-3 0-3 0-2 0-2 1-3 0-3",
                        "box 5 fr2-5: 3-5 3-5 2-5 2-5 3-5 3-5",
                        "box 1 fr5-8: 5-8 5-7 5-7 5-7 5-8 5-8",
                        "box 2 fr7-10: 8-10 7-10 7-10 7-9 8-10 8-10",
                        "box 3 fr9-13: 10-12 10-12 10-12 9-12 10-13 10-12",
                        "box 4 fr12-15: 12-15 12-15 12-14 12-14 13-15 12-15",
                        "box 5 fr14-17: 15-17 15-17 14-17 14-17 15-17 15-17",
                        "box 1 fr17-20: 17-20 17-19 17-19 17-19 17-20 17-20",
                        "box 2 fr19-22: 20-22 19-22 19-22 19-21 20-22 20-22",
                        "box 3 fr21-24: 22-24 22-24 22-24 21-24 22 22-24");
    }

    @Test
    void theOpenPositionOfEIsBox1() {
        assertThat(layout(Tuning.STANDARD, "E").get(0)).isEqualTo("box 1 fr0-3: 0-3 0-2 0-2 0-2 0-3 0-3");
    }

    @Test
    void atTheNutABoxHasTheNotesThatTheNeckHas() {
        assertThat(layout(Tuning.STANDARD, "B").get(0)).isEqualTo("box 3 fr0-3: 0-2 0-2 0-2 2 0-3 0-2");
    }

    @Test
    void inDropDTheShapesOfTheOtherStringsStay() {
        assertThat(layout(DROP_D, "A"))
                .contains(
                        "box 1 fr5-8: 5-7 5-7 5-7 5-7 5-8 5-8",
                        "box 2 fr7-10: 7-10 7-10 7-10 7-9 8-10 8-10",
                        "box 3 fr9-13: 10-12 10-12 10-12 9-12 10-13 10-12");
    }

    @Test
    void aRetunedStringMayHaveOneOrThreeNotesInTheWindow() {
        assertThat(layout(Tuning.of("E4 B3 G3 D3 A2 E♭2"), "A"))
                .contains("box 1 fr5-8: 6 5-7 5-7 5-7 5-8 5-8", "box 3 fr9-13: 9-11-13 10-12 10-12 9-12 10-13 10-12");
    }

    @Test
    void fretsAreCountedFromTheCapo() {
        assertThat(layout(Tuning.STANDARD.withCapo(2), "B")).isEqualTo(layout(Tuning.STANDARD, "A"));
    }

    @Test
    void aGuitarTunedDownKeepsItsShapes() {
        assertThat(layout(Tuning.of("E♭4 B♭3 G♭3 D♭3 A♭2 E♭2"), "A♭")).isEqualTo(layout(Tuning.STANDARD, "A"));
        assertThat(layout(Tuning.of("D4 A3 F3 C3 G2 C2"), "G")).isEqualTo(layout(DROP_D, "A"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    four strings   | G2 D2 A1 E1               | A | box 1 fr5-8: 5-8 5-7 5-7 5-7
                    four, drop D   | G2 D2 A1 D1               | A | box 1 fr5-7: 5-7 5-7 5-7 5-7
                    five strings   | G2 D2 A1 E1 B0            | A | box 1 fr9-13: 10-13 10-12 10-12 10-12 9-12
                    seven strings  | E4 B3 G3 D3 A2 E2 B1      | B | box 1 fr0-3: 0-3 0-2 0-2 0-2 2 0-3 0-2
                    seven, drop A  | E4 B3 G3 D3 A2 E2 A1      | E | box 1 fr4-8: 5-7 5-7 5-7 5-7 4-7 5-8 5-7
                    eight strings  | E4 B3 G3 D3 A2 E2 B1 F♯1  | B | box 1 fr4-8: 5-8 5-7 5-7 5-7 4-7 4-7 5-7 5-7
                    open G         | D4 B3 G3 D3 G2 D2         | G | box 1 fr5-8: 5-8 5-7 5-8 5-7 6-8 5-8
                    fifths         | E5 A4 D4 G3               | A | box 1 fr2-5: 2-5 2-5 3-5 3-5
                    re-entrant     | A4 E4 C4 G4               | A | box 1 fr8-12: 9-12 9-12 8-10 10-12
                    """)
    void otherStringsHaveTheirOwnBoxes(String what, String strings, String tonic, String box) {
        assertThat(layout(Tuning.of(strings), tonic)).as(what).contains(box);
    }

    @Test
    void theStringsOfACourseHaveTheSameFrets() {
        List<Box> boxes = BoxLayout.of(Tuning.of("E4 E4 B3 B3 G4 G3 D4 D3 A3 A2 E3 E2"), 9);
        Box box = boxes.stream().filter(any -> any.number() == 1).findFirst().orElseThrow();
        assertThat(written(box)).isEqualTo("box 1 fr5-8: 5-8 5-8 5-7 5-7 5-7 5-7 5-7 5-7 5-8 5-8 5-8 5-8");
    }

    @Test
    void onAnyStringsABoxIsAHandfulOfScaleNotes() {
        Seeded any = new Seeded(5);
        for (int i = 0; i < 500; i++) {
            Tuning tuning = anyTuning(any);
            int tonic = any.between(0, 11);
            for (Box box : BoxLayout.of(tuning, tonic)) {
                assertThat(box.highestFret() - box.lowestFret()).isBetween(0, 5);
                assertThat(box.pattern()).hasSize(tuning.size());
                assertThat(places(box)).isNotEmpty().allSatisfy(at -> {
                    assertThat(Scale.MINOR_PENTATONIC.contains(tuning.midi(at) - tonic))
                            .isTrue();
                    assertThat(at.fret()).isBetween(box.lowestFret(), box.highestFret());
                    assertThat(box.patternHolds(at)).isTrue();
                });
            }
        }
    }

    @Test
    void boxesGoRoundAndRepeatEveryTwelveFrets() {
        Seeded any = new Seeded(6);
        for (int i = 0; i < 500; i++) {
            List<Box> boxes = BoxLayout.of(anyTuning(any), any.between(0, 11));
            for (int b = 1; b < boxes.size(); b++) {
                assertThat(boxes.get(b).number()).isEqualTo(boxes.get(b - 1).number() % 5 + 1);
                assertThat(boxes.get(b).lowestFret())
                        .isGreaterThan(boxes.get(b - 1).lowestFret());
            }
            for (Box low : boxes.subList(1, boxes.size() - 5)) {
                Box high = boxes.get(boxes.indexOf(low) + 5);
                assertThat(places(high))
                        .containsExactlyElementsOf(places(low)
                                .map(at -> new StringFret(at.string(), at.fret() + 12))
                                .filter(at -> at.fret() <= 24)
                                .toList());
            }
        }
    }

    private static Tuning anyTuning(Seeded any) {
        return new Tuning(
                Stream.generate(() -> Pitch.ofMidi(any.between(30, 70)))
                        .limit(any.between(1, 8))
                        .toList(),
                any.between(0, 5));
    }

    private static Stream<StringFret> places(Box box) {
        return IntStream.rangeClosed(1, box.pattern().size())
                .boxed()
                .flatMap(string -> box.pattern().get(string - 1).stream().map(fret -> new StringFret(string, fret)));
    }

    private static List<String> layout(Tuning tuning, String tonic) {
        return BoxLayout.of(tuning, PitchClass.parse(tonic).chroma()).stream()
                .map(BoxLayoutTest::written)
                .toList();
    }

    /** Frets from the last string to the first, as players count a shape off. */
    private static String written(Box box) {
        return "box " + box.number() + " fr" + box.lowestFret() + "-" + box.highestFret() + ": "
                + IntStream.rangeClosed(1, box.pattern().size())
                        .mapToObj(i -> box.pattern().get(box.pattern().size() - i))
                        .map(frets -> frets.stream().map(String::valueOf).collect(Collectors.joining("-")))
                        .collect(Collectors.joining(" "));
    }
}
