package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;

class LikenessTest {

    private static final List<Note> MODEL = notes("| 4/7:1 3/5:1/2 3/7 2/5:2 |");

    private static List<Note> notes(String music) {
        return SoloText.parse(music).solo().notes();
    }

    private static Likeness likeness(String later) {
        return Likeness.of(MODEL, notes(later), Note::heardMidi);
    }

    @Test
    void aRepeatMatchesWhole() {
        assertThat(likeness("| 4/7:1 3/5:1/2 3/7 2/5:2 |")).isEqualTo(new Likeness(4, 0, 8));
    }

    @Test
    void soDoesATransposedOneThatBeginsLaterInTheBar() {
        assertThat(likeness("| r:3/2 4/9:1 3/7:1/2 3/9 2/7 |")).isEqualTo(new Likeness(4, 2, 8));
    }

    @Test
    void anOrnamentAddsNotesThatMatchNothing() {
        Likeness likeness = likeness("| 4/7:1/2 4/9 3/5:1/2 3/7 2/5:2 |");
        assertThat(likeness).isEqualTo(new Likeness(4, 0, 9));
        assertThat(likeness.share()).isCloseTo(8 / 9.0, within(1e-9));
    }

    @Test
    void rhythmAloneIsDeafToPitch() {
        assertThat(Likeness.ofRhythm(MODEL, notes("| 1/5:1 1/8:1/2 2/5 3/9:2 |"))
                        .share())
                .isEqualTo(1);
    }

    @Test
    void nothingIsLikeNothing() {
        assertThat(Likeness.of(List.of(), MODEL, Note::heardMidi).share()).isZero();
        assertThat(Likeness.of(List.of(), List.of(), Note::heardMidi).share()).isZero();
    }
}
