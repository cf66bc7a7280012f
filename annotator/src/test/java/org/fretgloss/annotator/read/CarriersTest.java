package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.grace;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.tablature;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.Map;
import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;

/** Which element bears the lyrics of a note. */
class CarriersTest {

    @Test
    void isTheFirstNoteOfAChord() throws ScoreException {
        assertThat(carriers(notation(note("A4", QUARTER) + inChord(note("C5", QUARTER)) + note("E5", QUARTER))))
                .isEqualTo(Map.of(1, 1, 2, 1, 3, 3));
    }

    @Test
    void isTheMainNoteOfAGraceNote() throws ScoreException {
        assertThat(carriers(tablature(grace(2, 5) + grace(2, 7) + fretted(2, 8, QUARTER))))
                .isEqualTo(Map.of(1, 3, 2, 3, 3, 3));
    }

    @Test
    void isMissingForAGraceNoteThatLeansOnNothing() throws ScoreException {
        assertThat(carriers(tablature(fretted(2, 8, QUARTER) + grace(2, 5) + rest(QUARTER))))
                .isEqualTo(Map.of(1, 1));
    }

    @Test
    void isTheFirstOfTiedNotes() throws ScoreException {
        String tied =
                with("<tie type=\"start\"/>", note("A4", QUARTER)) + with("<tie type=\"stop\"/>", note("A4", QUARTER));
        assertThat(carriers(notation(tied))).isEqualTo(Map.of(1, 1));
    }

    @Test
    void isMissingForANewToneOverTheTieOfItsChord() throws ScoreException {
        String bar = with("<tie type=\"start\"/>", note("A4", QUARTER))
                + with("<tie type=\"stop\"/>", note("A4", QUARTER))
                + inChord(note("C5", QUARTER));
        assertThat(carriers(notation(bar))).isEqualTo(Map.of(1, 1));
    }

    @Test
    void isTheEarliestInTheDocumentOfSeveralVoices() throws ScoreException {
        String voices = note("A4", 2 * QUARTER) + backup(2 * QUARTER) + note("E4", QUARTER) + note("F4", QUARTER);
        assertThat(carriers(notation(voices))).isEqualTo(Map.of(1, 1, 2, 1, 3, 3));
    }

    @Test
    void isAnotherVoiceWhereTheFirstOnlyGoesOn() throws ScoreException {
        String first =
                with("<tie type=\"start\"/>", note("A4", QUARTER)) + with("<tie type=\"stop\"/>", note("A4", QUARTER));
        assertThat(carriers(notation(first + backup(QUARTER) + note("E4", QUARTER))))
                .isEqualTo(Map.of(1, 1, 3, 3));
    }

    @Test
    void isNeverHidden() throws ScoreException {
        String hidden = note("A4", QUARTER).replace("<note>", "<note print-object=\"no\">");
        assertThat(carriers(notation(hidden + note("B4", QUARTER)))).isEqualTo(Map.of(2, 2));
    }

    @Test
    void saysThatTablatureMayShowNoLyrics() throws ScoreException {
        String warning = "there is only a tablature staff; some programs do not draw lyrics under tablature";
        assertThat(notices(tablature(fretted(2, 8, QUARTER)))).contains(warning);
        assertThat(notices(notation(note("A4", QUARTER)))).doesNotContain(warning);
    }

    private static Map<Integer, Integer> carriers(String score) throws ScoreException {
        return read(score).carriers();
    }
}
