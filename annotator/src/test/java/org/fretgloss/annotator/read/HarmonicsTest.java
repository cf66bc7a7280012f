package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.inChord;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.only;
import static org.fretgloss.annotator.read.Scores.pitch;
import static org.fretgloss.annotator.read.Scores.place;
import static org.fretgloss.annotator.read.Scores.tablature;

import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HarmonicsTest {

    private static final String NATURAL = "<harmonic><natural/></harmonic>";

    /**
     * The partials of an ideal string lie 12 log₂ n semitones above it: 12, 19.02, 24, 27.86 and 31.02 for n from 2 to 6.
     * A node that divides the string into n parts lies k/n of it from the nut, −12 log₂(1 − k/n) frets up.
     */
    @ParameterizedTest(name = "touched at {0}/{1} of the string")
    @CsvSource({"1, 2", "1, 3", "2, 3", "1, 4", "3, 4", "1, 5", "2, 5", "3, 5", "1, 6"})
    void soundWhereTheNodeOfTheStringSays(int parts, int of) throws ScoreException {
        long fret = Math.round(-semitones(1 - (double) parts / of));
        Note note = only(tablature(fretted(6, (int) fret, QUARTER, NATURAL)));
        assertThat(note.midi()).isEqualTo(40 + Math.round(semitones(of)));
        assertThat(note.has(Technique.HARMONIC)).isTrue();
    }

    @Test
    void soundAnOctaveAboveTheFretWhereArtificial() throws ScoreException {
        Note note = only(tablature(fretted(3, 7, QUARTER, "<harmonic><artificial/></harmonic>")));
        assertThat(note.pitch()).hasToString("D5");
        assertThat(note.at()).hasToString("Optional[3/7]");
    }

    @Test
    void areOneNoteWhereAChordSpellsThemOut() throws ScoreException {
        String base = fretted(3, 7, QUARTER, "<harmonic><artificial/><base-pitch/></harmonic>");
        String touched = inChord(fretted(3, 12, QUARTER, "<harmonic><artificial/><touching-pitch/></harmonic>"));
        String heard = inChord(element(
                pitch(Pitch.parse("D6")) + length(QUARTER), "<harmonic><artificial/><sounding-pitch/></harmonic>", ""));
        Note note = only(tablature(base + touched + heard));
        assertThat(note.ordinal()).isEqualTo(1);
        assertThat(note.pitch()).hasToString("D6");
        assertThat(note.at()).hasToString("Optional[3/7]");
    }

    @Test
    void sayNothingAboutTheOffsetOfTheStaff() throws ScoreException {
        String high = element(pitch(Pitch.parse("E4")) + length(QUARTER), place(6, 12) + NATURAL, "");
        assertThat(Scores.notes(tablature(high + high + fretted(2, 8, QUARTER))))
                .extracting(note -> note.written().offset())
                .containsOnly(0);
    }

    @Test
    void areKeptApartFromOtherNotesOfAChord() throws ScoreException {
        assertThat(Scores.notes(
                        tablature(fretted(2, 12, QUARTER, NATURAL) + inChord(fretted(1, 12, QUARTER, NATURAL)))))
                .hasSize(2);
    }

    private static double semitones(double ratio) {
        return 12 * Math.log(ratio) / Math.log(2);
    }
}
