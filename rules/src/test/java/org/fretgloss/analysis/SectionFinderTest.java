package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.StringJoiner;
import java.util.stream.LongStream;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.Scale;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where invented solos move to another home, and where they do not. */
class SectionFinderTest {

    private static final String FOUR_BARS_OF_A = " A4:1 C5 D5 C5 | A4:1 G4 E4 G4 | A4:1 C5 E5 D5 | C5:1 G4 A4:2 |";
    private static final String FOUR_BARS_OF_C =
            " C5:1 E♭5 F5 E♭5 | C5:1 B♭4 G4 B♭4 | C5:1 E♭5 G5 F5 | E♭5:1 B♭4 C5:2 |";

    private static Homes homesOf(String text) {
        return SoloText.parse(text).analysis().homes();
    }

    private static List<String> tonics(Homes homes) {
        return homes.sections().stream()
                .map(section -> section.home().scale().tonic().toString())
                .toList();
    }

    @Test
    void aMinorThirdUpWithoutChords() {
        SoloText text = SoloText.parse("|" + FOUR_BARS_OF_A + FOUR_BARS_OF_A + FOUR_BARS_OF_C + FOUR_BARS_OF_C);
        Analysis analysis = text.analysis();
        assertThat(tonics(analysis.homes())).containsExactly("A", "C");
        Note first =
                analysis.solo().notes().get(analysis.homes().sections().get(1).from());
        assertThat(first.bar().number()).isEqualTo("9");
        assertThat(analysis.homeAt(first).scale()).hasToString("C minor pentatonic");
        assertThat(analysis.degreeOf(first)).hasToString("1");
        assertThat(analysis.home().added()).isEmpty();
    }

    @Test
    void eightBarsUpASemitoneAndBack() {
        String d = " D4:1 F4 G4 A4 | C5:1 A4 G4 F4 | D4:1 C5 A4 G4 | F4:1 G4 D4:2 |";
        String eFlat = " E♭4:1 G♭4 A♭4 B♭4 | D♭5:1 B♭4 A♭4 G♭4 | E♭4:1 D♭5 B♭4 A♭4 | G♭4:1 A♭4 E♭4:2 |";
        String chords = "chords: " + eight("Dm7") + " | " + eight("E♭m7") + " | " + eight("Dm7") + "\n|";
        assertThat(tonics(homesOf(chords + d + d + eFlat + eFlat + d + d))).containsExactly("D", "E♭", "D");
    }

    private static String eight(String chord) {
        return String.join(" | ", java.util.Collections.nCopies(8, chord));
    }

    @Test
    void chordsThatMoveUnderALineThatStaysChangeNothing() {
        String chords = "chords: " + eight("Am7") + " | " + eight("Cm7") + "\n|";
        assertThat(homesOf(chords + FOUR_BARS_OF_A + FOUR_BARS_OF_A + FOUR_BARS_OF_A + FOUR_BARS_OF_A)
                        .sections())
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aBarOrTwoOfAnotherKeyAreNoSection(int bars) {
        String foreign = " E♭5:1 G♭5 A♭5 B♭5 |".repeat(bars);
        assertThat(homesOf("|" + FOUR_BARS_OF_A + FOUR_BARS_OF_A + foreign + FOUR_BARS_OF_A + FOUR_BARS_OF_A)
                        .sections())
                .hasSize(1);
    }

    @Test
    void aBluesWhoseLineFollowsEachChordStaysAtHome() {
        // chord tones of A7, D7 and E7, bar by bar, over chords that no form names
        String one = " A4:1 C♯5 E5 G5 |";
        String four = " D5:1 F♯5 A5 C6 |";
        String five = " E5:1 G♯5 B5 D6 |";
        String chords = "chords: A7 | A7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | E7\n|";
        String chorus = one.repeat(4) + four.repeat(2) + one.repeat(2) + five + four + one + " E5:1 D5 B4 A4 |";
        assertThat(tonics(homesOf(chords + chorus + chorus))).containsExactly("A");
    }

    @Test
    void aTwoFiveInPassingStaysAtHome() {
        String chords = "chords: C | C | Gm7 | C7 | F | F | G7 | C\n|";
        String line = " C5:1 D5 E5 G5 | E5:1 D5 C5:2 | B♭4:1 D5 F5 D5 | E5:1 C5 B♭4 G4 | A4:1 C5 F5:2 |"
                + " A4:1 C5 D5 F5 | D5:1 B4 G4 F4 | E4:1 G4 C5:2 |";
        assertThat(tonics(homesOf(chords + line + line))).containsExactly("C");
    }

    @Test
    void eachHomeNumbersItsOwnBoxesAndCountsItsOwnAddedNotes() {
        // box 1 of A minor at fret 5 with an F♯ in bar 2, then box 1 of C♯ minor at fret 9
        String a = " 4/7:1 3/5 3/7 2/5 | 2/7:1 2/5 3/7 3/5 | 4/7:1 2/5 2/8 3/7 | 3/5:1 4/5 4/7:2 |";
        String cSharp = " 4/11:1 3/9 3/11 2/9 | 2/12:1 2/9 3/11 3/9 | 4/11:1 2/9 2/12 3/11 | 3/9:1 4/9 4/11:2 |";
        Analysis analysis = SoloText.parse("|" + a + a + cSharp + cSharp).analysis();
        assertThat(tonics(analysis.homes())).containsExactly("A", "D♭");
        assertThat(analysis.boxes().spans())
                .extracting(span -> "bar " + span.first().bar().number() + " box "
                        + span.box().number() + " fr" + span.box().lowestFret())
                .containsExactly("bar 1 box 1 fr5", "bar 9 box 1 fr9");
        assertThat(analysis.home().added())
                .singleElement()
                .satisfies(note -> assertThat(note.count()).isEqualTo(2));
        assertThat(analysis.homes().sections().get(1).home().added()).isEmpty();
    }

    @Test
    void aChangeOfHomeBeginsABoxEvenWhereTheHandStays() {
        // frets 7 to 10 throughout: box 2 of A minor, then box 1 of B minor
        String a = " 4/7:1 4/10 3/7 3/9 | 2/8:1 2/10 1/8 1/10 | 1/8:1 2/10 2/8 3/9 | 3/7:1 4/10 4/7:2 |";
        String b = " 4/9:1 3/7 3/9 2/7 | 2/10:1 1/7 1/10 1/7 | 2/10:1 2/7 3/9 3/7 | 4/9:1 4/7 4/9:2 |";
        Analysis analysis = SoloText.parse("chords: " + eight("Am7") + " | " + eight("Bm7") + "\n|" + a + a + b + b)
                .analysis();
        assertThat(tonics(analysis.homes())).containsExactly("A", "B");
        assertThat(analysis.boxes().spans())
                .extracting(
                        span -> span.first().bar().number() + ": " + span.box().number())
                .containsExactly("1: 2", "9: 1");
    }

    @Test
    void aStatedHomeIsTheOnlyOne() {
        assertThat(homesOf("home: A minor pentatonic\n|" + FOUR_BARS_OF_A + FOUR_BARS_OF_A + FOUR_BARS_OF_C
                                + FOUR_BARS_OF_C)
                        .sections())
                .hasSize(1);
    }

    private static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aWanderingLineInOneScaleHasOneHome(long seed) {
        Random random = new Random(seed);
        int tonic = 52 + random.nextInt(12);
        assertThat(homesOf("|" + wandering(random, tonic, 12)).sections()).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aBluesIsOneHomeHoweverTheLineFollowsItsChords(long seed) {
        Random random = new Random(seed);
        List<Integer> roots = List.of(0, 0, 0, 0, 5, 5, 0, 0, 7, 5, 0, 0);
        StringJoiner line = new StringJoiner(" | ", "| ", " |");
        for (int bar = 0; bar < 24; bar++) {
            int root = 45 + roots.get(bar % 12);
            StringJoiner notes = new StringJoiner(" ");
            for (int quarter = 0; quarter < 4; quarter++) {
                // mostly chord tones of the dominant seventh, now and then a note of A minor pentatonic
                int tone = random.nextInt(4) == 0
                        ? 45 + List.of(0, 3, 5, 7, 10).get(random.nextInt(5))
                        : root + List.of(0, 4, 7, 10).get(random.nextInt(4));
                notes.add(Pitch.ofMidi(tone) + ":1");
            }
            line.add(notes.toString());
        }
        String chords = "chords: A7 | A7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | A7\n";
        assertThat(homesOf(chords + line).sections()).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aLineThatMovesByFewCommonNotesHasTwo(long seed) {
        Random random = new Random(seed);
        int tonic = 52 + random.nextInt(12);
        int up = List.of(1, 4, 6, 11).get(random.nextInt(4));
        SoloText text = SoloText.parse("|" + wandering(random, tonic, 8) + " |" + wandering(random, tonic + up, 8));
        Homes homes = text.analysis().homes();
        assertThat(homes.sections()).hasSize(2);
        Note first = text.solo().notes().get(homes.sections().get(1).from());
        assertThat(first.bar().index()).isBetween(7, 9);
    }

    private static String wandering(Random random, int tonic, int bars) {
        return WanderingLine.of(random, Scale.MINOR_PENTATONIC, tonic, bars, 4);
    }
}
