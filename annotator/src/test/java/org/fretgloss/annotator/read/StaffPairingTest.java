package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.grace;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.tabClef;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.List;
import java.util.Map;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;

/** Notation and tablature of one part. */
class StaffPairingTest {

    private static final String TWO_STAVES =
            attributes(FOUR_FOUR + "<staves>2</staves>" + tabClef(2) + details("number=\"2\"", STANDARD_TUNING));

    private static final String VIBRATO =
            "<ornaments><wavy-line type=\"start\"/><wavy-line type=\"stop\"/></ornaments>";

    @Test
    void makesOneNoteOfBothStaves() throws ScoreException {
        Reading reading = read(pair(
                note("G5", QUARTER, VIBRATO) + note("A5", QUARTER),
                fretted(2, 8, QUARTER, bend("2")) + fretted(2, 10, QUARTER)));
        List<Note> notes = reading.solo().notes();
        assertThat(notes).extracting(Note::ordinal).containsExactly(1, 2);
        assertThat(notes.get(0).pitch()).hasToString("G4");
        assertThat(notes.get(0).at()).hasToString("Optional[2/8]");
        assertThat(notes.get(0).written().pitch()).hasToString("G5");
        assertThat(notes.get(0).written().offset()).isEqualTo(12);
        assertThat(notes.get(0).bend()).isPresent();
        assertThat(notes.get(0).has(Technique.VIBRATO)).isTrue();
        assertThat(reading.carriers()).isEqualTo(Map.of(1, 1, 2, 2));
        assertThat(reading.partElements()).containsExactlyInAnyOrder(1, 2, 3, 4);
    }

    @Test
    void countsMarksOnBothStavesOnce() throws ScoreException {
        String hammer = "<hammer-on type=\"start\"/>";
        String end = "<hammer-on type=\"stop\"/>";
        List<Note> notes = notes(pair(
                technical("G4", hammer + bend("2")) + technical("A4", end),
                fretted(2, 8, QUARTER, hammer, bend("2")) + fretted(2, 10, QUARTER, end)));
        assertThat(notes.get(0).bend().orElseThrow().heights()).containsExactly(Fraction.ZERO, Fraction.of(2));
        assertThat(notes).extracting(Note::attack).containsExactly(Attack.PICKED, Attack.HAMMERED_ON);
    }

    @Test
    void pairsChordsByPitchWhateverTheirOrder() throws ScoreException {
        List<Note> notes = notes(pair(
                note("E5", QUARTER) + inChord(note("C5", QUARTER)),
                fretted(2, 1, QUARTER) + inChord(fretted(1, 0, QUARTER))));
        assertThat(notes)
                .extracting(note ->
                        note.ordinal() + ": " + note.pitch() + " " + note.at().orElseThrow())
                .containsExactly("2: C4 2/1", "1: E4 1/0");
    }

    @Test
    void pairsByOrderWhereABentNoteIsWrittenAtItsPeak() throws ScoreException {
        List<Note> notes = notes(pair(
                note("C5", QUARTER) + note("A4", QUARTER),
                fretted(2, 10, QUARTER) + fretted(2, 8, QUARTER, bend("2"))));
        assertThat(notes).extracting(note -> note.at().orElseThrow().toString()).containsExactly("2/10", "2/8");
        assertThat(notes.get(1).pitch()).hasToString("G4");
    }

    @Test
    void pairsGraceNotesWithGraceNotes() throws ScoreException {
        String graceInNotation = "<note><grace/><pitch><step>G</step><octave>4</octave></pitch></note>";
        List<Note> notes = notes(pair(graceInNotation + note("A4", QUARTER), grace(2, 8) + fretted(2, 10, QUARTER)));
        assertThat(notes).extracting(Note::grace).containsExactly(true, false);
        assertThat(notes).extracting(note -> note.at().orElseThrow().toString()).containsExactly("2/8", "2/10");
    }

    @Test
    void takesTiesFromEitherStaff() throws ScoreException {
        String tied =
                with("<tie type=\"start\"/>", note("G4", QUARTER)) + with("<tie type=\"stop\"/>", note("G4", QUARTER));
        List<Note> notes =
                notes(pair(tied + note("A4", QUARTER), fretted(2, 8, 2 * QUARTER) + fretted(2, 10, QUARTER)));
        assertThat(notes).extracting(Note::duration).containsExactly(Fraction.of(2), Fraction.ONE);
    }

    @Test
    void ignoresATiedFretThatTablatureRepeatsWithoutATie() throws ScoreException {
        String tied =
                with("<tie type=\"start\"/>", note("G4", QUARTER)) + with("<tie type=\"stop\"/>", note("G4", QUARTER));
        List<Note> notes = notes(pair(
                tied + note("A4", QUARTER), fretted(2, 8, QUARTER) + fretted(2, 8, QUARTER) + fretted(2, 10, QUARTER)));
        assertThat(notes).extracting(Note::ordinal).containsExactly(1, 3);
    }

    @Test
    void keepsStavesApartThatShowDifferentNotes() throws ScoreException {
        List<Note> notes = notes(pair(
                note("G4", 2 * QUARTER) + note("A4", 2 * QUARTER),
                Scores.rest(QUARTER) + fretted(6, 3, 2 * QUARTER) + fretted(6, 5, QUARTER)));
        assertThat(notes).extracting(Note::ordinal).containsExactlyInAnyOrder(1, 2, 4, 5);
    }

    private static String technical(String pitch, String marks) {
        return note(pitch, QUARTER, "<technical>" + marks + "</technical>");
    }

    /** Both staves in one bar, the tablature after a backup as programs write it. */
    private static String pair(String notation, String tablature) {
        String second =
                tablature.replaceAll("(</duration>|<grace/><pitch>.*?</pitch>)", "$1<voice>5</voice><staff>2</staff>");
        return partwise(TWO_STAVES, notation + backup(durations(notation)) + second);
    }

    private static int durations(String notes) {
        int sum = 0;
        for (String note : notes.split("</note>", -1)) {
            if (note.contains("<duration>") && !note.contains("<chord/>")) {
                String number = note.substring(note.indexOf("<duration>") + 10, note.indexOf("</duration>"));
                sum += Integer.parseInt(number);
            }
        }
        return sum;
    }
}
