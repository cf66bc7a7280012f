package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.grace;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.preBend;
import static org.fretgloss.annotator.read.Scores.release;
import static org.fretgloss.annotator.read.Scores.tablature;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bends. The meaning of bend-alter, pre-bend and release is that of the MusicXML 4.0 reference (W3C, elements bend,
 * bend-alter, pre-bend, release): the number of semitones of the movement, "a release after a bend has a negative
 * bend-alter value, not a zero value", "negative values indicate pre-bends or releases".
 */
class BendsTest {

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "bend 2, 0 2",
        "bend 0.5, 0 1/2",
        "bend 2 release -2, 0 2 0",
        "pre 2, 2",
        "pre -2, 2",
        "pre -1 release -1, 1 0",
        "bend 2 release -2 bend 2, 0 2 0 2",
        "bend 1 bend 1, 0 1 2",
        "pre -0.5 bend 1 bend 0.5 bend 2 release -2 bend 2 release -4, 1/2 3/2 2 4 2 4 0"
    })
    void followsTheReference(String steps, String heights) throws ScoreException {
        assertThat(bendOf(steps)).hasToString(heights);
    }

    /** What programs write against the reference, read as it is meant. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"bend 2 release 2, 0 2 0", "bend 2 release 0, 0 2 0", "bend 2 bend -2, 0 2 0", "release -2, 2 0"})
    void forgivesUsualMistakes(String steps, String heights) throws ScoreException {
        assertThat(bendOf(steps)).hasToString(heights);
    }

    @Test
    void belongsToTheFirstOfTiedNotes() throws ScoreException {
        Note note = only(tablature(with("<tie type=\"start\"/>", fretted(2, 8, QUARTER, bend("2")))
                + with("<tie type=\"stop\"/>", fretted(2, 8, QUARTER, release("-2")))));
        assertThat(heights(note)).containsExactly(0, 2, 0);
        assertThat(note.ordinal()).isEqualTo(1);
    }

    @Test
    void movesFromAGraceNoteToTheMainNoteAtTheSamePlace() throws ScoreException {
        List<Note> notes = notes(tablature(grace(2, 8, bend("2")) + fretted(2, 8, QUARTER)));
        assertThat(notes.get(0).grace()).isTrue();
        assertThat(notes.get(0).bend()).isEmpty();
        assertThat(heights(notes.get(1))).containsExactly(0, 2);
    }

    @Test
    void staysWithAGraceNoteOnAnotherFret() throws ScoreException {
        List<Note> notes = notes(tablature(grace(2, 8, bend("2")) + fretted(2, 10, QUARTER)));
        assertThat(heights(notes.get(0))).containsExactly(0, 2);
        assertThat(notes.get(1).bend()).isEmpty();
    }

    @Test
    void leadsFromAGraceNoteToAMainNoteWrittenAtThePeak() throws ScoreException {
        String grace = Scores.element("<grace/>" + Scores.pitch(Pitch.parse("G4")), bend("2"), "");
        List<Note> notes = notes(notation(grace + note("A4", QUARTER)));
        assertThat(notes.get(1).pitch()).hasToString("G4");
        assertThat(heights(notes.get(1))).containsExactly(0, 2);
        assertThat(notes.get(1).written().pitch()).hasToString("A4");
    }

    @Test
    void isOneStrokeWhereTheReleaseIsWrittenOut() throws ScoreException {
        Note note = only(tablature(fretted(2, 8, QUARTER, bend("2")) + fretted(2, 8, QUARTER, release("-2"))));
        assertThat(heights(note)).containsExactly(0, 2, 0);
        assertThat(note.duration()).isEqualTo(Fraction.of(2));
        assertThat(note.written().elements()).containsExactly(1, 2);
    }

    @Test
    void isOneStrokeWhereThePeakIsWrittenOutAtTheSameFret() throws ScoreException {
        String peak = Scores.element(Scores.pitch(Pitch.parse("A4")) + Scores.length(QUARTER), Scores.place(2, 8), "");
        assertThat(heights(only(tablature(fretted(2, 8, QUARTER, bend("2")) + peak))))
                .containsExactly(0, 2);
    }

    @Test
    void isOneStrokeWhereASlurLeadsToThePeak() throws ScoreException {
        String bent = note("G4", QUARTER, "<technical>" + bend("2") + "</technical><slur type=\"start\"/>");
        assertThat(heights(only(notation(bent + note("A4", QUARTER, "<slur type=\"stop\"/>")))))
                .containsExactly(0, 2);
        assertThat(notes(notation(bent + note("A4", QUARTER)))).hasSize(2);
        assertThat(notes(notation(bent + note("C5", QUARTER, "<slur type=\"stop\"/>"))))
                .hasSize(2);
    }

    @Test
    void isNeverJoinedWithAnotherFretOrANoteStruckAnew() throws ScoreException {
        assertThat(notes(tablature(fretted(2, 8, QUARTER, bend("2")) + fretted(2, 10, QUARTER))))
                .hasSize(2);
        assertThat(notes(tablature(fretted(2, 8, QUARTER, bend("2")) + fretted(2, 8, QUARTER))))
                .hasSize(2);
        assertThat(notes(tablature(fretted(2, 8, QUARTER, bend("2")) + fretted(2, 8, QUARTER, bend("2")))))
                .hasSize(2);
    }

    @Test
    void isToldFromTheVibratoBar() throws ScoreException {
        String dip = "<bend><bend-alter>-2</bend-alter><with-bar/></bend>"
                + "<bend><bend-alter>2</bend-alter><release/><with-bar/></bend>";
        Note dipped = only(tablature(fretted(2, 8, QUARTER, dip)));
        assertThat(dipped.bend()).isEmpty();
        assertThat(dipped.has(Technique.WITH_BAR)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0", "1000000000", "NaN", "1E2000000000", "wide", "''", "13"})
    void isLeftOutWhereNoFingerReaches(String width) throws ScoreException {
        String score = tablature(fretted(2, 8, QUARTER, bend(width)));
        assertThat(only(score).bend()).isEmpty();
        assertThat(notices(score)).anyMatch(text -> text.contains(width) && text.endsWith("passed over (bar 1)"));
    }

    private static String bendOf(String steps) throws ScoreException {
        StringBuilder marks = new StringBuilder();
        String[] words = steps.split(" ", -1);
        for (int i = 0; i < words.length; i += 2) {
            marks.append(
                    switch (words[i]) {
                        case "pre" -> preBend(words[i + 1]);
                        case "release" -> release(words[i + 1]);
                        default -> bend(words[i + 1]);
                    });
        }
        Bend bend =
                only(tablature(fretted(2, 8, QUARTER, marks.toString()))).bend().orElseThrow();
        return String.join(" ", bend.heights().stream().map(Fraction::toString).toList());
    }

    private static List<Integer> heights(Note note) {
        return note.bend().orElseThrow().heights().stream()
                .map(height -> (int) height.floor())
                .toList();
    }
}
