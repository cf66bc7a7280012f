package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;

class MelodyTest {

    private static final Solo SOLO =
            SoloText.parse("| 4/7:1 g3/5 3/6:1 x4/7:1 2/5+1/5:1 |").solo();

    private static final Melody MELODY = Melody.of(SOLO);

    private static List<Integer> indexes(List<Note> notes) {
        return notes.stream().map(Note::index).toList();
    }

    private static Note note(int index) {
        return SOLO.notes().get(index);
    }

    @Test
    void passesOverGraceNotesAndDeadNotes() {
        assertThat(MELODY.moments()).map(MelodyTest::indexes).containsExactly(List.of(0), List.of(2), List.of(4, 5));
    }

    @Test
    void knowsTheMomentsAroundANote() {
        assertThat(indexes(MELODY.after(note(0)))).containsExactly(2);
        assertThat(indexes(MELODY.after(note(2)))).containsExactly(4, 5);
        assertThat(indexes(MELODY.before(note(5)))).containsExactly(2);
        assertThat(MELODY.before(note(0))).isEmpty();
        assertThat(MELODY.after(note(5))).isEmpty();
    }

    @Test
    void aGraceNoteLeansOnTheNotesOfItsMoment() {
        assertThat(indexes(MELODY.at(note(1)))).containsExactly(2);
    }
}
