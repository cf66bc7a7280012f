package org.fretgloss.fingering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.pitch.Seeded;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;

/** Places that every player would take (common practice, no source), and what holds for any music. */
class HandFinderTest {

    @Test
    void anOpenChordIsTakenOpen() {
        assertThat(places("| C3+E3+G3+C4+E4:4 | C3+E3+G3+C4+E4:4 |"))
                .isEqualTo("5/3 4/2 3/0 2/1 1/0 5/3 4/2 3/0 2/1 1/0");
    }

    @Test
    void aBarreChordIsTakenUnderOneBarre() {
        assertThat(places("| F2+C3+F3+A♭3+C4+F4:4 |")).isEqualTo("6/1 5/3 4/3 3/1 2/1 1/1");
    }

    @Test
    void aPowerChordKeepsItsShapeWhenItMoves() {
        assertThat(places("| A♯2+F3+A♯3:1 B2+F♯3+B3 C3+G3+C4 |")).isEqualTo("5/1 4/3 3/3 5/2 4/4 3/4 5/3 4/5 3/5");
    }

    /** With the hand at fret 12, A4 is fret 14 of the third string. */
    @Test
    void writtenPlacesStandAndLeadTheHand() {
        assertThat(places("| 3/7:1 C4 D4 3/7 |")).startsWith("3/7 ").endsWith(" 3/7");
        assertThat(places("| 1/12:1/2 1/15 A4 1/12 G5 1/15 A4 1/12 |"))
                .isEqualTo("1/12 1/15 3/14 1/12 1/15 1/15 3/14 1/12");
    }

    @Test
    void aBendIsNeverPutOnAnOpenString() {
        for (String bent : List.of("E4b2", "B3b2", "G3b2", "D3b1")) {
            StringFret at =
                    inferred("| " + bent + ":4 |").solo().notes().get(0).at().orElseThrow();
            assertThat(at.isOpen()).as(bent).isFalse();
        }
    }

    @Test
    void aHammerOnStaysOnItsString() {
        Solo solo = inferred("| A3:1/2 hB3 C4 hD4 E4 pD4 C4 pA3 |").solo();
        for (int i = 1; i < 8; i += 2) {
            assertThat(solo.notes().get(i).sharesStringWith(solo.notes().get(i - 1)))
                    .as("note " + i)
                    .isTrue();
        }
    }

    @Test
    void whatNoStringReachesStaysWithoutPlaceAndTheRestGoesOn() {
        Fingering fingering = inferred("| C2:1 C4 C4 C8 |");
        assertThat(fingering.solo().notes().get(0).at()).isEmpty();
        assertThat(fingering.solo().notes().get(1).at()).isPresent();
        assertThat(fingering.solo().notes().get(3).at()).isEmpty();
        assertThat(fingering.inferred()).hasSize(2);
    }

    @Test
    void aSoloWithAllItsFretsIsLeftAlone() {
        Solo solo = SoloText.parse("| 3/7:1 x3/7 2/8 1/5 |").solo();
        assertThat(HandFinder.find(solo, Comfort.NEUTRAL)).isEqualTo(Fingering.asWritten(solo));
    }

    @Test
    void onePitchOverAndOverIsOnePlace() {
        assertThat(inferred("| " + "A4:1/2 ".repeat(8) + "|").solo().notes().stream()
                        .map(Note::at)
                        .distinct())
                .hasSize(1);
    }

    /** A pair of notes below the open A string has one string for both. */
    @Test
    void whereStringsAreTooFewANoteIsLeftOut() {
        Fingering fingering = inferred("| E2+F2:4 |");
        assertThat(fingering.solo().notes().stream().filter(note -> note.at().isPresent()))
                .hasSize(1);
    }

    @Test
    void everyPlaceSoundsItsPitchAndNoStringIsStruckTwiceAtOnce() {
        Seeded any = new Seeded(41);
        for (int i = 0; i < 60; i++) {
            Solo solo = anySolo(any);
            Fingering fingering = HandFinder.find(solo, Comfort.NEUTRAL);
            List<Note> placed = fingering.solo().notes().stream()
                    .filter(note -> note.at().isPresent())
                    .toList();
            assertThat(placed).allSatisfy(note -> {
                StringFret at = note.at().orElseThrow();
                assertThat(solo.tuning().midi(at)).isEqualTo(note.midi());
                assertThat(Neck.holds(at, solo.tuning())).isTrue();
                assertThat(fingering.sureness(note).orElse(1)).isBetween(0.0, 1.0);
            });
            assertThat(placed.stream()
                            .map(note ->
                                    note.onset() + " " + note.at().orElseThrow().string()))
                    .doesNotHaveDuplicates();
            assertThat(HandFinder.find(solo, Comfort.NEUTRAL)).isEqualTo(fingering);
        }
    }

    /** The same music a semitone up, under a capo on the first fret, is the same to the hand. */
    @Test
    void aCapoMovesTheMusicAndNotTheHand() {
        Seeded any = new Seeded(42);
        for (int i = 0; i < 20; i++) {
            List<Integer> pitches = IntStream.range(0, 16)
                    .map(note -> any.between(45, 76))
                    .boxed()
                    .toList();
            assertThat(places("capo: 1\n" + line(pitches, 1))).isEqualTo(places(line(pitches, 0)));
        }
    }

    private static String line(List<Integer> pitches, int up) {
        return pitches.stream()
                .map(midi -> Pitch.ofMidi(midi + up) + ":1/4")
                .collect(Collectors.joining(" ", "| ", " |"));
    }

    /** Four bars of one to four notes together on a tuning of four, six, seven or twelve strings. */
    private static Solo anySolo(Seeded any) {
        String tuning = any.of(List.of(
                "G2 D2 A1 E1", "E4 B3 G3 D3 A2 E2", "E4 B3 G3 D3 A2 E2 B1", "E4 E4 B3 B3 G4 G3 D4 D3 A3 A2 E3 E2"));
        int lowest = Tuning.of(tuning).openMidi(Tuning.of(tuning).size());
        StringBuilder music = new StringBuilder("tuning: " + tuning + "\n");
        for (int bar = 0; bar < 4; bar++) {
            music.append("| ");
            for (int beat = 0; beat < 4; beat++) {
                int notes = any.once(2) ? 1 : any.between(1, 4);
                music.append(IntStream.range(0, notes)
                                .mapToObj(n -> Pitch.ofMidi(lowest + any.between(0, 24) + 5 * n))
                                .distinct()
                                .map(Pitch::toString)
                                .collect(Collectors.joining("+")))
                        .append(":1 ");
            }
        }
        return SoloText.parse(music + "|").solo();
    }

    private static Fingering inferred(String music) {
        return HandFinder.find(SoloText.parse(music).solo(), Comfort.NEUTRAL);
    }

    private static String places(String music) {
        return inferred(music).solo().notes().stream()
                .map(note -> note.at().map(StringFret::toString).orElse("-"))
                .collect(Collectors.joining(" "));
    }
}
