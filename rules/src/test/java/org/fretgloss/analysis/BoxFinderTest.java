package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;

/** Paths reckoned by hand. In A minor: box 1 is frets 5 to 8, box 2 7 to 10, box 3 9 to 13, box 4 12 to 15. */
class BoxFinderTest {

    @Test
    void aSoloInOneBoxHasOneSpan() {
        assertThat(path("| 1/5:1 1/8 2/5 2/8 | 3/7 3/5 4/7 4/5 |")).isEqualTo("box 1 fr5 from 0");
    }

    /** Two frets of reach are cheaper than going to box 2 and back. */
    @Test
    void anExcursionStaysInTheBox() {
        String music = "| 1/5:1 1/8 1/10 1/8 | 1/5:4 |";
        assertThat(path(music)).isEqualTo("box 1 fr5 from 0");
        Solo solo = solo(music);
        assertThat(find(solo, "A minor pentatonic").reachOf(solo.notes().get(2)))
                .isEqualTo(2);
    }

    /** Staying would cost 5 + 4 + 7 + 7. */
    @Test
    void farNotesBeginANewBoxAtOnce() {
        assertThat(path("| 1/5:1 1/8 2/13 1/12 | 1/15 2/15:3 |")).isEqualTo("box 1 fr5 from 0, box 4 fr12 from 2");
    }

    /** Two notes two frets outside cost 4: less than a change, more than one after a rest. */
    @Test
    void aRestMakesAChangeCheaper() {
        assertThat(path("| 1/5:1/2 1/8 1/5 1/5 1/5:2 | 1/10:1 1/10 1/8:2 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path("| 1/5:1/2 1/8 1/5 1/5 1/5:1 r | 1/10:1 1/10 1/8:2 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 5");
    }

    @Test
    void aRestShorterThanABeatDoesNot() {
        assertThat(path("| 1/5:1/2 1/8 1/5 1/5 1/5:3/2 r:1/2 | 1/10:1 1/10 1/8:2 |"))
                .isEqualTo("box 1 fr5 from 0");
    }

    @Test
    void aRestIsCountedInTheMetersOwnBeats() {
        assertThat(path("meter: 12/8\n| 1/5:1/2 1/8 1/5 1/5 1/5:3 r:1 | 1/10:1 1/10 1/8:4 |"))
                .isEqualTo("box 1 fr5 from 0");
        assertThat(path("meter: 12/8\n| 1/5:1/2 1/8 1/5 1/5 1/5:5/2 r:3/2 | 1/10:1 1/10 1/8:4 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 5");
    }

    @Test
    void aSlideMakesAChangeCheaper() {
        assertThat(path("| 1/5:1/2 1/8 1/5 1/5 1/5:2 | s1/10:1 1/10 1/8:2 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 5");
    }

    /** The slide is three notes after the first far note: 2 + 2 and the slide's 3 are more than a change at once. */
    @Test
    void aSlideThatComesTooLateDoesNotHelp() {
        assertThat(path("| 1/5:1 1/8 1/5 1/5 | 1/10 1/10 s1/8 1/10 | 1/10:4 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 4");
    }

    /** 2 + 2 + 1 outside box 1 is what a change costs, and 2 + 1 what one costs after a rest. */
    @Test
    void tiesGoToStaying() {
        assertThat(path("| 1/5:1 1/8 1/5 1/5 | 1/10 1/10 1/9 1/8 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path("| 1/5:1 1/8 1/5 r | 1/10 1/9 1/8:2 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path("| 1/5:1 1/8 1/5 r | 1/10 1/10 1/8:2 |")).isEqualTo("box 1 fr5 from 0, box 2 fr7 from 3");
    }

    /** The notes on fret 8 lie in both windows; the hand stays until it must move. */
    @Test
    void aChangeComesAsLateAsItCan() {
        assertThat(path("| 1/5:1 1/5 1/5 1/8 | 2/8 1/10 2/10 1/10 | 1/10:4 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 5");
    }

    /** Fret 8 after the rest would do in box 1 too, but to change there costs 3 and at fret 10 it costs 5. */
    @Test
    void aChangeComesAtThePhraseStartWhereItIsCheaper() {
        assertThat(path("| 1/5:1 1/8 1/5 r | 1/8 2/8 1/10 2/10 | 1/10:4 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 3");
    }

    @Test
    void theSameBoxTwelveFretsUpIsAnotherPlace() {
        assertThat(path("| 1/5:1 1/8 2/8 s2/20 | 1/17 1/20 2/17:2 |")).isEqualTo("box 1 fr5 from 0, box 1 fr17 from 3");
    }

    @Test
    void theOpenPositionIsABox() {
        assertThat(path("home: E minor pentatonic\n| 6/0:1 6/3 5/0 5/2 | 4/0 4/2 3/0 3/2 |"))
                .isEqualTo("box 1 fr0 from 0");
    }

    @Test
    void anOpenStringCostsNothingInAnyBox() {
        assertThat(path("| 1/12:1 5/0 1/15 5/0 | 6/0 2/13 4/0 1/12 |")).isEqualTo("box 4 fr12 from 0");
    }

    /** Frets 2 and 3 lie in the windows of E's box 1 (0 to 3) and box 2 (2 to 5). */
    @Test
    void anOpenStringDecidesBetweenBoxesThatTie() {
        assertThat(path("home: E minor pentatonic\n| 4/2:1 5/2 3/0 6/3 |")).isEqualTo("box 1 fr0 from 0");
    }

    /** Box 1 and box 2 both cost 2; one of the three notes is in box 2's pattern, none in box 1's. */
    @Test
    void theSoloBeginsInTheBoxWhosePatternHoldsMore() {
        assertThat(path("| 1/6:1 1/6 1/10:2 |")).isEqualTo("box 2 fr7 from 0");
    }

    /** Box 1 and box 2 both cost 2 and hold one note; fret 5 alone is in box 5 (2 to 5) as in box 1. */
    @Test
    void orElseInTheLowerBox() {
        assertThat(path("| 1/5:1 1/10 r:2 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path("| 1/5:1 2/5 1/5:2 |")).isEqualTo("box 5 fr2 from 0");
    }

    /** Box 2 and box 3 both have frets 9 and 10. */
    @Test
    void aNewBoxIsTheLowerOneWhereNothingTellsMore() {
        assertThat(path("| 6/5:1 6/8 6/5 r | 3/9 2/10 1/10 3/9 |")).isEqualTo("box 1 fr5 from 0, box 2 fr7 from 3");
    }

    /** Three double stops reach 5 + 4 frets out of box 1 each; both notes of the first begin box 4. */
    @Test
    void notesStruckTogetherAreInOneBox() {
        assertThat(path("| 1/5:1 2/5 1/8 2/8 | 2/13+1/12 2/13+1/12 2/13+1/12 1/15 |"))
                .isEqualTo("box 1 fr5 from 0, box 4 fr12 from 4");
    }

    /** One note of the double stop lies in each box; 2 frets of reach do not split it. */
    @Test
    void aDoubleStopIsNotSplit() {
        assertThat(path("| 1/5:1 2/5 3/5 r | 2/8+1/10 2/8 1/8 1/5 |")).isEqualTo("box 1 fr5 from 0");
    }

    /** After the rest 2 frets out of box 1 are not worth the change's 3, but with the grace note they are 4. */
    @Test
    void graceNotesCostLikeNotes() {
        assertThat(path("| 1/5:1 1/8 1/5 r | 1/10 1/8 2/8 1/8 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path("| 1/5:1 1/8 1/5 r | g1/10 1/10 1/8 2/8 1/8 |"))
                .isEqualTo("box 1 fr5 from 0, box 2 fr7 from 3");
    }

    @Test
    void deadNotesShowWhereTheHandIs() {
        assertThat(path("| 1/5:1 1/8 1/5 r | x1/10 1/10 1/8:2 |")).isEqualTo("box 1 fr5 from 0, box 2 fr7 from 3");
    }

    @Test
    void aMajorHomeUsesTheBoxesAMinorThirdBelow() {
        assertThat(path("home: A major pentatonic\n| 1/5:1 1/2 2/5 2/2 | 3/4 3/2 4/4 4/2 |"))
                .isEqualTo("box 1 fr2 from 0");
        assertThat(path("home: A mixolydian\n| 1/5:1 1/2 2/5 2/2 | 3/4 3/2 4/4 4/2 |"))
                .isEqualTo("box 1 fr2 from 0");
    }

    /** The lowest string of drop D has its A on fret 7; the shapes and windows are those of the other strings. */
    @Test
    void inDropDTheBoxesAreThoseOfTheOtherStrings() {
        String dropD = "tuning: E4 B3 G3 D3 A2 D2\n";
        assertThat(path(dropD + "| 6/7:1 6/5 5/7 4/5 | 3/7 2/5 1/8 1/5 |")).isEqualTo("box 1 fr5 from 0");
        assertThat(path(dropD + "| 6/0:1 6/10 6/9 5/7 | 5/10 4/10 6/10 6/0 |")).isEqualTo("box 2 fr7 from 0");
    }

    @Test
    void notesWithoutFretBelongToTheBoxAroundThem() {
        Solo solo = solo("| 1/5:1 1/8 1/5 1/8 | 2/13 1/12 1/15 2/15 | 1/12:4 |");
        Solo gaps = withoutFrets(solo, note -> Set.of(0, 4, 8).contains(note.index()));
        BoxPath path = find(gaps, "A minor pentatonic");
        assertThat(written(path)).isEqualTo("box 1 fr5 from 1, box 4 fr12 from 5");
        assertThat(path.boxOf(gaps.notes().get(0))).isEmpty();
        assertThat(path.boxOf(gaps.notes().get(4)))
                .isEqualTo(path.boxOf(gaps.notes().get(3)));
        assertThat(path.boxOf(gaps.notes().get(8)))
                .isEqualTo(path.boxOf(gaps.notes().get(7)));
    }

    @Test
    void withoutFretsThereAreNoBoxes() {
        Solo solo = withoutFrets(solo("| 1/5:4 |"), note -> true);
        assertThat(find(solo, "A minor pentatonic").spans()).isEmpty();
    }

    private static Solo withoutFrets(Solo solo, Predicate<Note> which) {
        List<Note> notes = solo.notes().stream()
                .map(note -> which.test(note) ? withoutFret(note) : note)
                .toList();
        return new Solo(
                solo.title(), solo.part(), solo.tuning(), true, solo.bars(), notes, solo.chords(), solo.tempos());
    }

    private static Note withoutFret(Note note) {
        return new Note(
                note.index(),
                note.ordinal(),
                note.bar(),
                note.onset(),
                note.duration(),
                note.pitch(),
                Optional.empty(),
                note.bend(),
                note.attack(),
                note.techniques(),
                note.grace(),
                note.voice(),
                note.written());
    }

    /** The boxes of an example, in A minor unless it says otherwise. */
    private static String path(String example) {
        HomeScale home = SoloText.parse(example).given().home().orElseGet(() -> HomeScale.parse("A minor pentatonic"));
        return written(find(solo(example), home.toString()));
    }

    private static Solo solo(String example) {
        return SoloText.parse(example).solo();
    }

    private static BoxPath find(Solo solo, String home) {
        return BoxFinder.find(solo, HomeScale.parse(home), Phrasing.of(solo, Silences.of(solo)));
    }

    private static String written(BoxPath path) {
        return String.join(
                ", ",
                path.spans().stream()
                        .map(span -> "box " + span.box().number() + " fr"
                                + span.box().lowestFret() + " from "
                                + span.first().index())
                        .toList());
    }
}
