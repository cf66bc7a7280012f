package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.pitch;
import static org.fretgloss.annotator.read.Scores.place;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What notes sound like, against what is written. */
class PitchesTest {

    private static final String OCTAVE_DOWN =
            "<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>";

    @Test
    void fretsSayThePitchAndTheStaffOnlySpellsIt() throws ScoreException {
        Note note = notes(guitar("", at("E♭5", 2, 4) + at("G5", 2, 8))).get(0);
        assertThat(note.pitch()).hasToString("E♭4");
        assertThat(note.written().pitch()).hasToString("E♭5");
        assertThat(note.written().offset()).isEqualTo(12);
    }

    @Test
    void saysThatTheScoreIsWrittenAnOctaveHigh() throws ScoreException {
        assertThat(notices(guitar("", at("G5", 2, 8))))
                .contains("the notes are written an octave above where they sound, as is usual for guitar");
        assertThat(notices(guitar("", at("G4", 2, 8)))).isEmpty();
    }

    @Test
    void takesTheOffsetThatExplainsMostNotes() throws ScoreException {
        String score = guitar("", at("G5", 2, 8) + at("A5", 2, 10) + at("A4", 2, 9) + at("C6", 1, 8));
        assertThat(notes(score)).extracting(note -> note.pitch().toString()).containsExactly("G4", "A4", "G♯4", "C5");
        // the third is written a semitone above its fret, which the others tell to be eleven too few
        assertThat(notes(score)).extracting(note -> note.written().offset()).containsExactly(12, 12, 1, 12);
        assertThat(notices(score))
                .contains("string and fret disagree with the written pitch, and are believed (bar 1)");
    }

    @Test
    void doesNotDoubtABentNoteThatIsWrittenAtItsPeak() throws ScoreException {
        String bent = element(pitch(Pitch.parse("A5")) + length(QUARTER), place(2, 8) + bend("2"), "");
        assertThat(notices(guitar("", at("G5", 2, 8) + at("A5", 2, 10) + bent)))
                .noneMatch(text -> text.contains("disagree"));
    }

    /** The capo raises what sounds; the written notes may follow it or not. */
    @ParameterizedTest(name = "{0} at 2/8 over capo 2 sounds A4")
    @CsvSource({"G4, -2", "A4, 0", "A5, 12", "G5, 10"})
    void addsTheCapo(String written, int offset) throws ScoreException {
        String score =
                partwise(attributes(FOUR_FOUR + details("", STANDARD_TUNING + "<capo>2</capo>")), at(written, 2, 8));
        assertThat(only(score).pitch()).hasToString("A4");
        assertThat(only(score).written().offset()).isEqualTo(offset);
    }

    @Test
    void movesTheSpellingWithTheTransposition() throws ScoreException {
        String score = partwise(
                attributes(FOUR_FOUR + details("", STANDARD_TUNING + "<capo>1</capo>")),
                at("C♯5", 2, 2) + at("D5", 2, 3) + at("G5", 1, 3));
        assertThat(notes(score)).extracting(note -> note.pitch().toString()).containsExactly("D4", "E♭4", "A♭4");
    }

    @Test
    void readsANoteWithoutFretAsItsStaffReadsTheOthers() throws ScoreException {
        List<Note> notes = notes(guitar("", at("G5", 2, 8) + note("A5", QUARTER)));
        assertThat(notes.get(1).pitch()).hasToString("A4");
        assertThat(notes.get(1).at()).isEmpty();
    }

    /** W3C MusicXML 4.0, transpose: "what must be added to a written pitch to get a correct sounding pitch". */
    @Test
    void believesTheDeclaredTranspositionWhereNoFretsStand() throws ScoreException {
        assertThat(only(partwise(attributes(FOUR_FOUR + OCTAVE_DOWN), note("B♭5", QUARTER)))
                        .pitch())
                .hasToString("B♭4");
        String down = "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>";
        assertThat(only(partwise(attributes(FOUR_FOUR + down), note("C♯5", QUARTER)))
                        .pitch())
                .hasToString("B4");
    }

    /** W3C MusicXML 4.0, octave: 4 is the octave started by middle C, whatever the clef shows. */
    @Test
    void isNotMovedByAClefWithAnOctaveChange() throws ScoreException {
        String clef = "<clef><sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change></clef>";
        assertThat(only(partwise(attributes(FOUR_FOUR + clef), note("A3", QUARTER)))
                        .pitch())
                .hasToString("A3");
    }

    @Test
    void namesANoteThatHasOnlyAFretByTheKey() throws ScoreException {
        String fretOnly = element(length(QUARTER), place(2, 9), "");
        assertThat(only(guitar("<key><fifths>3</fifths></key>", fretOnly)).pitch())
                .hasToString("G♯4");
        assertThat(only(guitar("<key><fifths>-4</fifths></key>", fretOnly)).pitch())
                .hasToString("A♭4");
    }

    @Test
    void readsAQuarterToneAccidentalAsTheToneItLeans() throws ScoreException {
        String curled = note("G4", QUARTER).replace("<alter>0</alter>", "<alter>0.5</alter>");
        assertThat(only(partwise(attributes(FOUR_FOUR), curled)).pitch()).hasToString("G4");
    }

    @ParameterizedTest
    @CsvSource({"2, 999", "2, 37", "2, -1", "9, 3", "0, 3", "-2, 3"})
    void passesOverAPlaceThatIsNotOnTheNeck(int string, int fret) throws ScoreException {
        String score = guitar("", at("G4", 2, 8) + at("A4", string, fret));
        assertThat(notes(score).get(1).at()).isEmpty();
        assertThat(notes(score).get(1).pitch()).hasToString("A4");
        assertThat(notices(score)).anyMatch(text -> text.contains("passed over (bar 1)"));
    }

    @Test
    void leavesOutWhatHasNoReadablePitch() throws ScoreException {
        String strange = note("A4", QUARTER).replace("<step>A<", "<step>H<");
        String high = note("A4", QUARTER).replace("<octave>4<", "<octave>77<");
        String score = partwise(
                attributes(FOUR_FOUR), strange + high + "<note><duration>12</duration></note>" + note("A4", QUARTER));
        assertThat(notes(score)).extracting(Note::ordinal).containsExactly(4);
        assertThat(notices(score)).contains("a note without a readable pitch is left out (3 times, first in bar 1)");
    }

    /** W3C MusicXML 4.0, pitch: the octave is required. */
    @Test
    void readsNoPitchWithoutAnOctave() throws ScoreException {
        String gone = "<octave> is missing from <pitch>, so the written pitch is passed over (bar 1)";
        String unread = "a note without a readable pitch is left out (bar 1)";
        String bare = partwise(attributes(FOUR_FOUR), without("octave", note("A4", QUARTER)) + note("A4", QUARTER));
        String fretted = guitar("", without("octave", at("A4", 2, 10)));

        assertThat(notes(bare)).extracting(Note::ordinal).containsExactly(2);
        assertThat(notices(bare)).contains(gone, unread);
        assertThat(only(fretted).pitch()).hasToString("A4");
        assertThat(notices(fretted)).contains(gone).doesNotContain(unread);
    }

    private static String without(String element, String text) {
        return text.replaceAll("<" + element + ">[^<]*</" + element + ">", "");
    }

    private static String guitar(String beginning, String bar) {
        return partwise(attributes(beginning + FOUR_FOUR + details("", STANDARD_TUNING)), bar);
    }

    private static String at(String written, int string, int fret) {
        return element(pitch(Pitch.parse(written)) + length(QUARTER), place(string, fret), "");
    }
}
