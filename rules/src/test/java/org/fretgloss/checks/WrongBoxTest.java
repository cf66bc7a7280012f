package org.fretgloss.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;

class WrongBoxTest {

    private static final String LINE =
            "home: A minor pentatonic\n| 4/5:1/2 4/7 3/5 3/7 2/5 %s:1 2/5:1/2 | 3/7:1 3/5:1/2 4/7 4/5:1 4/7 |";

    private static SoloText with(String note) {
        return SoloText.parse(LINE.formatted(note));
    }

    /** The staff says G4, the tab A♭4: that one of them is wrong is told once, by the check that compares the two. */
    @Test
    void leavesToAnotherCheckWhatStaffAndTabDisagreeAbout() {
        assertThat(new WrongBox().examine(with("2/9").analysis(), Settings.defaults()))
                .hasSize(1);
        assertThat(new WrongBox().examine(with("2/9=G4").analysis(), Settings.defaults()))
                .isEmpty();
        assertThat(new PitchAgainstFret().examine(with("2/9=G4").analysis(), Settings.defaults()))
                .hasSize(1);
    }

    /** Two outside notes side by side are a line of their own, also where only the staff is written for one of them. */
    @Test
    void readsANeighbourWithoutStringAndFret() {
        SoloText solo = SoloText.parse(LINE.formatted("2/9").replace("2/5:1/2 |", "G♯4:1/2 |"));
        assertThat(solo.solo().notes()).anyMatch(note -> note.at().isEmpty());
        assertThat(new WrongBox().examine(solo.analysis().asWritten(), Settings.defaults()))
                .isEmpty();
    }

    /** C♯ belongs to A Mixolydian; that D7 has a C is a clash for the ear, and no slip of the fret. */
    @Test
    void leavesAScaleNoteAloneHoweverItClashes() {
        SoloText solo = SoloText.parse("home: A mixolydian\nchords: A7 | D7\n"
                + "| 4/7:1 3/6 2/5 3/7 | 2/5:1 3/6 1/5 3/7 | 4/7:1 3/6 2/5 3/7 | 2/7:1 3/6 1/5 3/7 |");
        assertThat(new WrongBox().examine(solo.analysis(), Settings.defaults())).isEmpty();
    }

    /** The ♭6 sounds in three bars and would make the home natural minor; without the one that leaps about it does not. */
    @Test
    void doubtsTheOneNoteThatALargerScaleHangsOn() {
        SoloText solo = SoloText.parse("""
                chords: Am7
                | 4/7:1/2 3/5 3/7 2/5 2/8 1/5 2/8:1 | 2/5:1/2 2/6 2/8 1/5 2/8 2/5 3/7:1 | 4/7:1/2 3/4 3/5 3/7 3/5:2 |
                | 2/8:1/2 1/5 1/8 1/5 2/6 1/8 1/5:1 | 2/8:1/2 2/5 3/7 3/5 4/7:2 | 3/5:1/2 3/7 2/5 2/8 1/5:2 | 4/7:4 |""");

        assertThat(solo.analysis().home().scale()).hasToString("A natural minor");
        assertThat(new WrongBox().examine(solo.analysis(), Settings.defaults()))
                .singleElement()
                .satisfies(finding -> assertThat(finding.note().bar().number()).isEqualTo("4"));
    }

    /** As many notes as a whole album, all in one bar: what is near a note is counted, not looked through. */
    @Test
    void takesItsTimeFromTheNotesAndNotFromTheirBars() {
        int notes = 20_000;
        Random random = new Random(1);
        String line = IntStream.range(0, notes)
                .mapToObj(i -> " %d/%d:1".formatted(1 + random.nextInt(5), 5 + random.nextInt(5)))
                .collect(Collectors.joining());
        Analysis analysis = SoloText.parse(
                        "home: A minor pentatonic\nchords: A7\nmeter: " + notes + "/4\n|" + line + " |")
                .analysis();

        assertTimeout(
                Duration.ofSeconds(5),
                () -> new WrongBox().examine(analysis, Settings.defaults()).count());
    }
}
