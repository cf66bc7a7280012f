package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.forward;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.read;

import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read is said in a musician's words, and never ends in another exception. */
class RefusalsTest {

    private static final String FULL = note("A4", 4 * QUARTER);

    @ParameterizedTest
    @ValueSource(strings = {"0", "-4", "1e99", "NaN", "3000000000"})
    void namesPartBarAndBeatOfImpossibleDivisions(String divisions) {
        String change = "<attributes><divisions>" + divisions + "</divisions></attributes>";
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(FULL, note("A4", QUARTER) + change + FULL)))
                .withMessage("'Lead Guitar', bar 2 beat 2: the divisions of a quarter note are '" + divisions
                        + "', which is no number from 0.000001 to 999999999; export the score again");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-12", "1000000000000", "1e2000000000", "NaN"})
    void namesPartBarAndBeatOfImpossibleLengths(String duration) {
        String odd = note("A4", QUARTER).replace("<duration>12<", "<duration>" + duration + "<");
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(FULL, note("A4", 2 * QUARTER) + odd)))
                .withMessage(
                        "'Lead Guitar', bar 2 beat 3: the duration '" + duration
                                + "' of a note is no number from 0 to 999999999, and no note value is printed; export the score again");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-12", "100000000000000000000", "NaN"})
    void namesTheLimitOfAGap(String duration) {
        String gap = forward(QUARTER).replace("12", duration);
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(FULL, note("A4", QUARTER) + gap)))
                .withMessage("'Lead Guitar', bar 2 beat 2: the duration '" + duration
                        + "' of a gap is no number from 0 to 999999999; export the score again");
    }

    @Test
    void refusesLengthsThatCannotBeCountedExactly() {
        StringBuilder bars = new StringBuilder();
        for (int prime : new int[] {10007, 10009, 10037, 10039, 10061, 10067, 10069}) {
            bars.append("<attributes><divisions>").append(prime).append("</divisions></attributes>");
            bars.append(note("A4", 1));
        }
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(FULL, bars.toString())))
                .withMessageContaining("bar 2")
                .withMessageContaining("too fine to be counted");
    }

    @Test
    void refusesACrowdOfNotesThatSoundTogether() throws ScoreException {
        String more = note("A4", QUARTER) + "<backup><duration>" + QUARTER + "</duration></backup>";
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(FULL, more.repeat(4_000))))
                .withMessageContaining("bar 2")
                .withMessageContaining("more than 200 notes sound together");
        assertThat(read(notation(FULL, note("A4", 1).repeat(300))).solo().notes())
                .hasSize(301);
    }

    @Test
    void refusesAScoreLongerThanAnyMusic() {
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(note("A4", 900_000_000), FULL)))
                .withMessageContaining("bar 1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<score-partwise/>",
                "<score-partwise><part-list/></score-partwise>",
                "<score-timewise/>",
                "<score-partwise><part id='P1'/></score-partwise>",
                "<score-partwise><part id='P1'><measure/></part></score-partwise>",
                "<score-partwise><part><measure><note/></measure></part></score-partwise>"
            })
    void refusesScoresWithoutNotes(String score) {
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score))
                .withMessageContaining("no notes");
    }

    @Test
    void refusesOtherXml() {
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read("<html><body/></html>"))
                .withMessageContaining("MusicXML");
    }

    @Test
    void refusesXmlThatBreaksOff() {
        String score = notation(FULL, FULL);
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score.substring(0, score.length() * 2 / 3)));
    }

    /** Nothing is validated: a later version of the format, or another program's own elements, must not stand in the way. */
    @Test
    void passesOverWhatItDoesNotKnow() throws ScoreException {
        String unknown = "<hologram depth=\"3\"><voice>7</voice></hologram>";
        String note = note("A4", QUARTER)
                .replace("<note>", "<note mood=\"blue\"><aura/>")
                .replace("</note>", "<notehead>banana</notehead><stem>sideways</stem></note>");
        assertThat(notes(notation(unknown + note + note("B4", QUARTER))))
                .extracting(found -> found.ordinal() + " " + found.pitch())
                .containsExactly("1 A4", "2 B4");
    }
}
