package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.score;

import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.read.Scores.PartText;
import org.fretgloss.solo.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartChoiceTest {

    private static final PartText VOICE = plain("Voice", note("A4", QUARTER));
    private static final PartText FRETTED = plain("Track 2", fretted(2, 5, QUARTER) + fretted(2, 8, QUARTER));
    private static final PartText CHORDS = plain(
            "Track 3", fretted(2, 5, QUARTER) + inChord(fretted(3, 5, QUARTER)) + inChord(fretted(1, 5, QUARTER)));
    private static final PartText BENT = plain("Track 4", fretted(2, 5, QUARTER, bend("2")) + fretted(2, 8, QUARTER));
    private static final PartText DRUMS = plain("Drums", "<note><unpitched/><duration>12</duration></note>");

    @Test
    void prefersFrets() throws ScoreException {
        assertThat(chosen(VOICE, FRETTED)).isEqualTo("Track 2");
        assertThat(chosen(FRETTED, VOICE)).isEqualTo("Track 2");
    }

    @Test
    void prefersSingleNotesToChords() throws ScoreException {
        assertThat(chosen(CHORDS, FRETTED)).isEqualTo("Track 2");
    }

    @Test
    void prefersTheMarksOfASoloist() throws ScoreException {
        assertThat(chosen(FRETTED, BENT)).isEqualTo("Track 4");
    }

    /** General MIDI level 1: program 30 is a guitar, 34 a bass, 1 a piano. */
    @Test
    void prefersGuitarsToOtherInstruments() throws ScoreException {
        PartText piano = part("Track 1", 1, attributes(FOUR_FOUR), note("A4", QUARTER));
        PartText guitar = part("Track 5", 30, attributes(FOUR_FOUR), note("A4", QUARTER));
        PartText bass = part("Track 6", 34, attributes(FOUR_FOUR), note("A2", QUARTER));
        assertThat(chosen(piano, bass, guitar)).isEqualTo("Track 5");
        assertThat(chosen(bass, piano)).isEqualTo("Track 1");
    }

    @Test
    void prefersThePartThatIsCalledTheSolo() throws ScoreException {
        assertThat(chosen(plain("Rhythm Guitar", fretted(2, 5, QUARTER)), plain("Guitar Solo", fretted(2, 5, QUARTER))))
                .isEqualTo("Guitar Solo");
    }

    @Test
    void seesTwoStavesWithTheSameNotesAsSingleNotes() throws ScoreException {
        String both = note("E4", QUARTER)
                + Scores.backup(QUARTER)
                + fretted(2, 5, QUARTER).replace("</duration>", "</duration><staff>2</staff>");
        PartText pair = part("Track 1", attributes(FOUR_FOUR + Scores.tabClef(2)), both);
        assertThat(chosen(CHORDS, pair)).isEqualTo("Track 1");
    }

    @Test
    void takesTheFirstOfEquals() throws ScoreException {
        assertThat(read(score(FRETTED, FRETTED)).solo().part()).isEqualTo(new Part("P1", "Track 2"));
    }

    @Test
    void saysWhatItChoseWhereThereWasAChoice() throws ScoreException {
        assertThat(notices(score(VOICE, FRETTED, DRUMS)))
                .contains("'Track 2' is read as the solo; --part chooses another: 1 'Voice'");
        assertThat(notices(score(DRUMS, VOICE))).noneMatch(text -> text.contains("read as the solo"));
    }

    @ParameterizedTest
    @CsvSource({"P1", "Voice", "voice", "1", "' voice '"})
    void obeysTheUser(String wanted) throws ScoreException {
        Reading reading = read(score(VOICE, FRETTED), wanted);
        assertThat(reading.solo().part()).isEqualTo(new Part("P1", "Voice"));
        assertThat(reading.partElements()).containsExactly(1);
        assertThat(reading.parts()).containsExactly(new Part("P1", "Voice"), new Part("P2", "Track 2"));
        assertThat(reading.notices()).extracting(Notice::text).noneMatch(text -> text.contains("read as the solo"));
    }

    @Test
    void namesThePartsThatThereAre() {
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score(VOICE, FRETTED), "Banjo"))
                .withMessage("there is no part 'Banjo'; the score has 1 'Voice', 2 'Track 2'");
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score(VOICE, VOICE), "Voice"))
                .withMessageContaining("several parts are called 'Voice'");
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score(VOICE, DRUMS), "Drums"))
                .withMessage("'Drums' has no notes that sound with a pitch and for a time");
    }

    @Test
    void refusesAScoreWithoutNotes() {
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(notation(rest(4 * QUARTER))))
                .withMessageContaining("no notes that sound with a pitch and for a time");
        assertThatExceptionOfType(ScoreException.class)
                .isThrownBy(() -> read(score(DRUMS)))
                .withMessageContaining("no notes that sound with a pitch and for a time");
    }

    @Test
    void findsTheNameOfAPartWhoseIdentifierIsWrong() throws ScoreException {
        String score = score(VOICE, FRETTED).replace("<part id=\"P2\">", "<part id=\"P9\">");
        assertThat(read(score).solo().part().name()).isEqualTo("Track 2");
    }

    private static PartText plain(String name, String bar) {
        return part(name, attributes(FOUR_FOUR), bar);
    }

    private static String chosen(PartText... parts) throws ScoreException {
        return read(score(parts)).solo().part().name();
    }
}
