package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.tablature;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;

class TiesTest {

    private static final String START = "<tie type=\"start\"/>";
    private static final String STOP = "<tie type=\"stop\"/>";

    @Test
    void joinsTiedNotesAcrossBars() throws ScoreException {
        Note note = only(notation(
                with(START, note("A4", 4 * QUARTER)),
                with(STOP + START, note("A4", 4 * QUARTER)),
                with(STOP, note("A4", QUARTER))));
        assertThat(note.duration()).isEqualTo(Fraction.of(9));
        assertThat(note.written().elements()).containsExactly(1, 2, 3);
        assertThat(note.written().tieOpen()).isFalse();
    }

    @Test
    void readsTiesThatAreOnlyDrawn() throws ScoreException {
        assertThat(only(notation(note("A4", QUARTER, "<tied type=\"start\"/>")
                                + note("A4", QUARTER, "<tied type=\"continue\"/>")
                                + note("A4", QUARTER, "<tied type=\"stop\"/>")))
                        .duration())
                .isEqualTo(Fraction.of(3));
    }

    @Test
    void keepsEveryToneOfAChordApart() throws ScoreException {
        String bar = with(START, note("A4", QUARTER))
                + inChord(with(START, note("C5", QUARTER)))
                + with(STOP, note("C5", QUARTER))
                + inChord(note("E5", QUARTER));
        assertThat(notes(notation(bar)))
                .extracting(note -> note.pitch() + " " + note.duration() + " "
                        + note.written().tieOpen())
                .containsExactly("A4 1 true", "C5 2 false", "E5 1 false");
    }

    @Test
    void leadsIntoAnotherVoice() throws ScoreException {
        String first = with(START + "<voice>1</voice>", note("A4", 4 * QUARTER));
        String second = with("<voice>1</voice>", note("E5", 4 * QUARTER))
                + backup(4 * QUARTER)
                + with(STOP + "<voice>2</voice>", note("A4", QUARTER));
        assertThat(notes(notation(first, second)).get(0).duration()).isEqualTo(Fraction.of(5));
    }

    @Test
    void followsTheStringWhereThePitchIsWrittenAnew() throws ScoreException {
        String moved = with(STOP, fretted(2, 10, QUARTER)).replace("<fret>10<", "<fret>8<");
        assertThat(only(tablature(with(START, fretted(2, 8, QUARTER)) + moved)).duration())
                .isEqualTo(Fraction.of(2));
    }

    @Test
    void staysOpenWhereNothingFollows() throws ScoreException {
        List<Note> notes = notes(notation(with(START, note("A4", QUARTER)) + note("B4", QUARTER)));
        assertThat(notes).extracting(note -> note.written().tieOpen()).containsExactly(true, false);
    }

    @Test
    void aStopWithoutAStartIsANoteOfItsOwn() throws ScoreException {
        Reading reading = read(notation(note("B4", QUARTER) + with(STOP, note("A4", QUARTER))));
        assertThat(reading.solo().notes()).hasSize(2);
        assertThat(reading.carriers()).containsOnlyKeys(1);
    }

    @Test
    void pairsEveryTieOfACrowdedChordOnce() throws ScoreException {
        int many = 199;
        String chord = with(START, note("A4", QUARTER))
                + inChord(with(START, note("A4", QUARTER))).repeat(many);
        String next = with(STOP, note("A4", QUARTER))
                + inChord(with(STOP, note("A4", QUARTER))).repeat(many);
        assertThat(notes(notation(chord + next)))
                .hasSize(many + 1)
                .allMatch(note -> note.duration().equals(Fraction.of(2)));
    }
}
