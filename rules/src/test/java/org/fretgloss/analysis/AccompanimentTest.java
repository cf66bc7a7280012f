package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Accompaniment.Sounding;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Invented comping under a solo. */
class AccompanimentTest {

    private static final String SOLO = "| A4:4 | D5:4 | A4:4 | E4:4 |";

    /** Chords struck at a moment for so many quarter notes: "A2 G3 C♯4". */
    private static Stream<Sounding> struck(int start, int length, String voicing) {
        return Stream.of(voicing.split(" ", -1))
                .map(name -> new Sounding(Pitch.parse(name).midi(), Fraction.of(start), Fraction.of(start + length)));
    }

    /** A bar of four stabs. */
    private static List<Sounding> stabs(int bar, String voicing) {
        List<Sounding> notes = new ArrayList<>();
        for (int beat = 0; beat < 4; beat++) {
            struck(4 * bar + beat, 1, voicing).forEach(notes::add);
        }
        return notes;
    }

    private static List<String> chords(Harmony harmony) {
        return harmony.spans().stream()
                .map(span ->
                        span.start() + " " + span.chord().map(Object::toString).orElse("-"))
                .toList();
    }

    private static Harmony infer(List<Sounding> notes) {
        return new Accompaniment(notes).infer(SoloText.parse(SOLO).solo().bars());
    }

    @Test
    void aChordForEachBarMarkedAsInferred() {
        List<Sounding> notes = new ArrayList<>(stabs(0, "A2 G3 C♯4 E4"));
        notes.addAll(stabs(1, "D3 A3 C4 F♯4"));
        notes.addAll(stabs(2, "A2 G3 C♯4 E4"));
        notes.addAll(stabs(3, "E2 G♯3 D4 B3"));
        Harmony harmony = infer(notes);
        assertThat(harmony.source()).isEqualTo(Harmony.Source.INFERRED);
        assertThat(chords(harmony)).containsExactly("0 A7", "4 D7", "8 A7", "12 E7");
    }

    @Test
    void twoChordsShareABar() {
        List<Sounding> notes = Stream.concat(struck(0, 2, "A2 E3 A3 C♯4"), struck(2, 2, "D3 A3 D4 F♯4"))
                .toList();
        assertThat(chords(infer(notes))).containsExactly("0 A", "2 D");
    }

    @Test
    void aBrokenChordIsHeardOverTheWholeBar() {
        List<String> broken = List.of("A2", "E3", "C4", "G3");
        List<Sounding> notes = IntStream.range(0, 4)
                .boxed()
                .flatMap(beat -> struck(beat, 1, broken.get(beat)))
                .toList();
        assertThat(chords(infer(notes))).containsExactly("0 Am7");
    }

    @Test
    void aBarThatSaysNothingKeepsTheChordBefore() {
        List<Sounding> notes = new ArrayList<>(stabs(1, "A2 E3 A3 C4"));
        notes.addAll(stabs(3, "D3 A3 D4 F4"));
        assertThat(chords(infer(notes))).containsExactly("0 -", "4 Am", "12 Dm");
    }

    @Test
    void aBassLineAloneNamesNoChord() {
        assertThat(infer(struck(0, 4, "A2").toList())).isEqualTo(Harmony.UNKNOWN);
    }

    @Test
    void chordsThatTheUserGivesWin() {
        SoloText solo = SoloText.parse("chords: Am\n" + SOLO);
        Accompaniment comping = new Accompaniment(stabs(0, "A2 G3 C♯4 E4"));
        Note first = solo.solo().notes().get(0);
        assertThat(Analysis.of(solo.solo(), solo.given(), comping)
                        .chordAt(first)
                        .orElseThrow())
                .hasToString("Am");
        assertThat(Analysis.of(solo.solo(), Given.NOTHING, comping)
                        .chordAt(first)
                        .orElseThrow())
                .hasToString("A7");
    }

    /** A note that holds throughout must not have all those since its beginning looked at again for each bar. */
    @Test
    @Timeout(10)
    void aPedalUnderTwelveThousandNotes() {
        int bars = 1_000;
        Bar first = SoloText.parse("| A4:4 |").solo().bars().get(0);
        List<Bar> many = IntStream.range(0, bars)
                .mapToObj(i -> new Bar(
                        i,
                        "" + (i + 1),
                        Fraction.of(4L * i),
                        first.length(),
                        first.length(),
                        Fraction.ZERO,
                        first.meter(),
                        first.key(),
                        false,
                        false,
                        false))
                .toList();
        Stream<Sounding> chords = IntStream.range(0, bars)
                .boxed()
                .flatMap(bar -> stabs(bar, bar % 2 == 0 ? "C♯3 E3 G3" : "C3 D3 F♯3").stream());
        List<Sounding> notes = Stream.concat(struck(0, 4 * bars, "A1"), chords).toList();
        assertThat(chords(new Accompaniment(notes).infer(many)))
                .hasSize(bars)
                .startsWith("0 A7", "4 D7")
                .endsWith("3992 A7", "3996 D7");
    }
}
