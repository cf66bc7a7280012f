package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.place;
import static org.fretgloss.annotator.read.Scores.tablature;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TechniquesTest {

    @ParameterizedTest
    @CsvSource({
        "<ornaments><wavy-line type='start'/><wavy-line type='stop'/></ornaments>, VIBRATO",
        "<ornaments><other-ornament>vibrato</other-ornament></ornaments>, VIBRATO",
        "<technical><other-technical>P.M.</other-technical></technical>, PALM_MUTE",
        "<technical><other-technical>let ring</other-technical></technical>, LET_RING",
        "<tied type='let-ring'/>, LET_RING",
        "<articulations><staccato/></articulations>, STACCATO",
        "<articulations><scoop/></articulations>, SLIDE_IN",
        "<articulations><plop/></articulations>, SLIDE_IN",
        "<articulations><falloff/></articulations>, SLIDE_OUT",
        "<articulations><doit/></articulations>, SLIDE_OUT",
        "<technical><harmonic><natural/></harmonic></technical>, HARMONIC"
    })
    void readsMarksOfOneNote(String mark, Technique technique) throws ScoreException {
        assertThat(only(notation(note("A4", QUARTER, mark))).techniques()).containsExactly(technique);
    }

    @Test
    void knowsDeadNotes() throws ScoreException {
        Note crossed = only(tablature(with("<notehead>x</notehead>", fretted(4, 5, QUARTER))));
        assertThat(crossed.isDead()).isTrue();
        Note unpitched = only(tablature(element("<unpitched/>" + length(QUARTER), place(4, 5), "")));
        assertThat(unpitched.isDead()).isTrue();
        assertThat(unpitched.pitch()).hasToString("G3");
    }

    @Test
    void readsPalmMutesThatPlaybackKnows() throws ScoreException {
        String muted = fretted(6, 3, QUARTER).replace("</note>", "<play><mute>palm</mute></play></note>");
        assertThat(only(tablature(muted)).techniques()).containsExactly(Technique.PALM_MUTE);
    }

    @Test
    void drawsVibratoOnOverTheNotesBetween() throws ScoreException {
        String bar = note("A4", QUARTER, waves("start"))
                + note("B4", QUARTER)
                + note("C5", QUARTER, waves("stop"))
                + note("D5", QUARTER);
        assertThat(notes(notation(bar)))
                .extracting(note -> note.has(Technique.VIBRATO))
                .containsExactly(true, true, true, false);
    }

    @Test
    void leavesAVibratoThatIsNeverEndedOnItsOwnNote() throws ScoreException {
        String bar = note("A4", QUARTER, waves("start")) + note("B4", QUARTER) + note("C5", QUARTER);
        assertThat(notes(notation(bar)))
                .extracting(note -> note.has(Technique.VIBRATO))
                .containsExactly(true, false, false);
    }

    @Test
    void takesTheWavyLineOfATrillForNoVibrato() throws ScoreException {
        String trill = "<ornaments><trill-mark/><wavy-line type=\"start\"/><wavy-line type=\"stop\"/></ornaments>";
        assertThat(only(notation(note("A4", QUARTER, trill))).techniques()).isEmpty();
    }

    @Test
    void holdsWordsOverTheStaffToTheEndOfTheirDashes() throws ScoreException {
        String words = "<direction><direction-type><words>P.M.</words></direction-type>"
                + "<direction-type><dashes type=\"start\"/></direction-type></direction>";
        String end = "<direction><direction-type><dashes type=\"stop\"/></direction-type></direction>";
        String bar =
                note("A3", QUARTER) + words + note("A3", QUARTER) + note("A3", QUARTER) + end + note("A3", QUARTER);
        assertThat(notes(notation(bar)))
                .extracting(note -> note.has(Technique.PALM_MUTE))
                .containsExactly(false, true, true, false);
    }

    @Test
    void holdsWordsWithoutDashesForTheirMoment() throws ScoreException {
        String words = "<direction><direction-type><words>let ring</words></direction-type></direction>";
        List<Note> notes =
                notes(notation(words + note("A3", QUARTER) + inChord(note("E4", QUARTER)) + note("A3", QUARTER)));
        assertThat(notes).extracting(note -> note.has(Technique.LET_RING)).containsExactly(true, true, false);
    }

    private static String waves(String type) {
        return "<ornaments><wavy-line type=\"" + type + "\"/></ornaments>";
    }
}
