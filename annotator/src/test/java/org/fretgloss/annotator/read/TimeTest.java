package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.forward;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.grace;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.tablature;

import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When notes sound. */
class TimeTest {

    @Test
    void takesDivisionsFromTheFileAndAnewWhereTheyChange() throws ScoreException {
        String change = "<attributes><divisions>480</divisions></attributes>";
        assertThat(notes(notation(note("A4", QUARTER) + change + note("B4", 240) + note("C5", 160))))
                .extracting(Note::onset)
                .containsExactly(Fraction.ZERO, Fraction.ONE, Fraction.of(3, 2));
    }

    @Test
    void countsQuartersWhereNoDivisionsAreDeclared() throws ScoreException {
        assertThat(notes(partwise("", note("A4", 1) + note("B4", 3))).get(1).duration())
                .isEqualTo(Fraction.of(3));
    }

    @Test
    void goesBackAndForward() throws ScoreException {
        String bar = note("A4", 2 * QUARTER)
                + forward(QUARTER)
                + note("B4", QUARTER)
                + backup(4 * QUARTER)
                + note("E3", 4 * QUARTER);
        assertThat(notes(notation(bar)))
                .extracting(note -> note.pitch() + " " + note.onset() + " " + note.duration())
                .containsExactly("E3 0 4", "A4 0 2", "B4 3 1");
    }

    @Test
    void strikesAChordTogether() throws ScoreException {
        String bar = fretted(4, 2, QUARTER) + inChord(fretted(3, 2, 2 * QUARTER)) + fretted(2, 2, QUARTER);
        assertThat(notes(tablature(bar)))
                .extracting(Note::onset)
                .containsExactly(Fraction.ZERO, Fraction.ZERO, Fraction.ONE);
    }

    @Test
    void passesOverRestsOfAllKinds() throws ScoreException {
        String hidden = "<note print-object=\"no\"><rest/><duration>12</duration></note>";
        String placed = "<note><rest><display-step>B</display-step><display-octave>4</display-octave></rest>"
                + "<duration>12</duration></note>";
        assertThat(notes(notation(hidden + placed + rest(QUARTER) + note("A4", QUARTER))))
                .extracting(Note::onset)
                .containsExactly(Fraction.of(3));
    }

    @Test
    void givesAGraceNoteTheOnsetAndBarOfItsMainNote() throws ScoreException {
        String score = tablature(fretted(2, 5, 4 * QUARTER) + grace(2, 7), fretted(2, 8, QUARTER));
        Note grace = notes(score).get(1);
        assertThat(grace.grace()).isTrue();
        assertThat(grace.duration()).isEqualTo(Fraction.ZERO);
        assertThat(grace.onset()).isEqualTo(Fraction.of(4));
        assertThat(grace.bar().number()).isEqualTo("2");
        assertThat(grace.beat()).isEqualTo(Fraction.ONE);
    }

    @Test
    void takesTupletsFromTheirDurations() throws ScoreException {
        assertThat(notes(notation(note("A4", 4) + note("B4", 4) + note("C5", 4) + note("D5", QUARTER))))
                .extracting(Note::onset)
                .containsExactly(Fraction.ZERO, Fraction.of(1, 3), Fraction.of(2, 3), Fraction.ONE);
    }

    @ParameterizedTest(name = "{0} with {1} dots, {2} in the time of {3}, lasts {4}")
    @CsvSource({"quarter, 0, 1, 1, 1", "eighth, 1, 1, 1, 3/4", "half, 2, 1, 1, 7/2", "eighth, 0, 3, 2, 1/3"})
    void fallsBackOnThePrintedValue(String type, int dots, int actual, int normal, String length)
            throws ScoreException {
        String note = ("<note><pitch><step>A</step><octave>4</octave></pitch><duration>0</duration><type>%s</type>%s"
                        + "<time-modification><actual-notes>%d</actual-notes><normal-notes>%d</normal-notes>"
                        + "</time-modification></note>")
                .formatted(type, "<dot/>".repeat(dots), actual, normal);
        assertThat(notes(notation(note)).get(0).duration()).isEqualTo(Fraction.parse(length));
    }

    @Test
    void leavesOutANoteWithoutAnyLength() throws ScoreException {
        String score = notation(note("A4", 0) + note("B4", QUARTER));
        assertThat(notes(score)).extracting(Note::ordinal).containsExactly(2);
        assertThat(notices(score)).contains("a note without any length is left out (bar 1)");
    }

    @Test
    void readsARoundedDecimalAsTheFractionItStandsFor() throws ScoreException {
        String third = note("A4", QUARTER).replace("<duration>12<", "<duration>0.333333<");
        assertThat(notes(partwise("<attributes><divisions>1</divisions></attributes>", third + third + third)))
                .extracting(Note::onset)
                .containsExactly(Fraction.ZERO, Fraction.of(1, 3), Fraction.of(2, 3));
    }

    @Test
    void beginsAVoiceWithItsBarWhereItGoesBackTooFar() throws ScoreException {
        String score = notation(note("A4", QUARTER) + backup(3 * QUARTER) + note("E3", QUARTER), note("A4", QUARTER));
        assertThat(notes(score)).extracting(Note::onset).contains(Fraction.ZERO, Fraction.ZERO, Fraction.ONE);
        assertThat(notices(score)).contains("a voice that would begin before its bar begins with it (bar 1)");
    }

    @Test
    void skipsCuesButNotTheirTime() throws ScoreException {
        String cue = "<note><cue/><pitch><step>C</step><octave>5</octave></pitch><duration>12</duration></note>";
        assertThat(notes(partwise(attributes(FOUR_FOUR), cue + note("A4", QUARTER))))
                .extracting(Note::ordinal, Note::onset)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(2, Fraction.ONE));
    }

    /** Quarter notes with a printed value, of which grace notes with durations took some of the time. */
    @Test
    void givesTimeBackToTheNoteThatLooksLongerThanItCounts() throws ScoreException {
        String taking = timedGrace(2) + timedGrace(3);
        assertThat(notes(notation(printed(QUARTER - 5) + taking + printed(QUARTER))))
                .extracting(note -> note.onset() + " " + note.duration())
                .containsExactly("0 1", "1 0", "1 0", "1 1");
        assertThat(notes(notation(printed(QUARTER) + taking + printed(QUARTER - 5) + printed(QUARTER))))
                .extracting(note -> note.onset() + " " + note.duration())
                .containsExactly("0 1", "1 0", "1 0", "1 1", "2 1");
    }

    @Test
    void givesTimeBackToEveryNoteOfAChord() throws ScoreException {
        String chord = printed(QUARTER - 2) + inChord(printed(QUARTER - 2));
        assertThat(notes(notation(timedGrace(2) + chord + printed(QUARTER))))
                .extracting(note -> note.onset() + " " + note.duration())
                .containsExactly("0 0", "0 1", "0 1", "1 1");
        assertThat(notes(notation(chord + timedGrace(2) + printed(QUARTER))))
                .extracting(note -> note.onset() + " " + note.duration())
                .containsExactly("0 1", "0 1", "1 0", "1 1");
    }

    @Test
    void owesNothingToAnotherVoice() throws ScoreException {
        String other = backup(QUARTER) + note("E4", QUARTER);
        assertThat(notes(notation(printed(QUARTER) + timedGrace(2) + other)))
                .extracting(Note::duration)
                .containsOnly(Fraction.ONE, Fraction.ZERO);
    }

    @ParameterizedTest(name = "{0} gives {1}")
    @CsvSource({
        "quarter 7 quarter 7 half 15, 1 1 15/7",
        "eighth 5 half 20, 1/2 2",
        "quarter 3 half 8, 1 8/3",
        "bogus 2 bogus 3, 2 3"
    })
    void countsUndeclaredDivisionsAsMostPrintedValuesSay(String written, String lengths) throws ScoreException {
        String[] words = written.split(" ", -1);
        StringBuilder bar = new StringBuilder();
        for (int i = 0; i < words.length; i += 2) {
            bar.append(note("A4", Integer.parseInt(words[i + 1]))
                    .replace("</duration>", "</duration><type>" + words[i] + "</type>"));
        }
        assertThat(notes(partwise("", bar.toString())))
                .extracting(note -> note.duration().toString())
                .containsExactly(lengths.split(" ", -1));
    }

    private static String printed(int duration) {
        return note("A4", duration).replace("</duration>", "</duration><type>quarter</type>");
    }

    private static String timedGrace(int duration) {
        return note("B4", duration).replace("<note>", "<note><grace/>");
    }
}
