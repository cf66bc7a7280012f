package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.bend;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.score;
import static org.fretgloss.annotator.read.Scores.tabClef;

import java.util.Map;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.read.Scores.PartText;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One guitar in two parts. */
class PartPairingTest {

    private static final String LINE =
            fretted(2, 5, QUARTER) + fretted(2, 8, QUARTER, bend("2")) + fretted(3, 7, QUARTER) + rest(QUARTER);
    private static final PartText TABLATURE = tablature("Lead TAB", LINE);
    private static final PartText NOTATION = notation("Lead", "E5", "G5", "D5");
    private static final PartText OTHER = notation("Organ", "C5", "E5", "G5");

    @ParameterizedTest
    @ValueSource(strings = {"P1", "P3", "Lead", "Lead TAB", "1", "3"})
    void areChosenByEither(String wanted) throws ScoreException {
        Reading reading = read(score(NOTATION, OTHER, TABLATURE), wanted);
        assertThat(reading.solo().part()).isEqualTo(new Part("P1", "Lead"));
        assertThat(reading.solo().notes()).hasSize(3);
    }

    @Test
    void leaveTheOtherPartsAlone() throws ScoreException {
        Reading reading = read(score(NOTATION, OTHER, TABLATURE), "Organ");
        assertThat(reading.solo().part().name()).isEqualTo("Organ");
        assertThat(reading.partElements()).containsExactlyInAnyOrder(5, 6, 7, 8);
    }

    /** A lyric may stand in either part, so its number must be free in both. */
    @Test
    void haveTheirLyricsUnderTheNotation() throws ScoreException {
        Reading reading = read(score(TABLATURE, OTHER, NOTATION));
        assertThat(reading.solo().notes()).extracting(Note::ordinal).containsExactly(9, 10, 11);
        assertThat(reading.carriers()).isEqualTo(Map.of(9, 9, 10, 10, 11, 11));
        assertThat(reading.partElements()).containsExactlyInAnyOrder(1, 2, 3, 4, 9, 10, 11, 12);
    }

    @Test
    void haveNotesThatOnlyTheTablatureShows() throws ScoreException {
        String whole = line("E5", "G5", "D5");
        String gap = rest(QUARTER) + note("G5", QUARTER) + note("D5", QUARTER) + rest(QUARTER);
        Reading reading = read(score(
                part("Lead", attributes(FOUR_FOUR), gap, whole, whole, whole),
                part("Lead TAB", attributes(FOUR_FOUR + tabClef(1)), LINE, LINE, LINE, LINE)));
        assertThat(reading.solo().part().name()).isEqualTo("Lead");
        assertThat(reading.solo().notes()).hasSize(12);
        assertThat(reading.solo().notes().get(0).ordinal()).isEqualTo(17);
        assertThat(reading.carriers()).containsEntry(17, 17).containsEntry(2, 2);
        assertThat(reading.solo().notes())
                .extracting(note -> note.bar().number())
                .startsWith("1", "1", "1", "2");
    }

    /** Of three notes one that differs is more than a slip. */
    @ParameterizedTest
    @CsvSource({"E5, G5, D5, 1", "E4, G4, D4, 1", "F♯4, A4, E4, 1", "E5, G5, C5, 2", "E5, A5, B5, 2"})
    void agreeInMomentsAndPitchesUpToADistance(String first, String second, String third, int solos)
            throws ScoreException {
        Reading reading = read(score(notation("Lead", first, second, third), TABLATURE));
        assertThat(reading.notices().stream().filter(notice -> notice.text().contains("--part chooses another")))
                .hasSize(solos - 1);
    }

    @Test
    void countTheSameBars() throws ScoreException {
        PartText shorter = part(
                "Lead TAB", attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING)), LINE, rest(4 * QUARTER));
        assertThat(read(score(NOTATION, shorter)).solo().part().name()).isEqualTo("Lead TAB");
    }

    /** General MIDI level 1: 28 and 31 are guitars, 41 is a violin. */
    @ParameterizedTest
    @CsvSource({"28, 28, P1", "28, 31, P1", "41, 28, P2"})
    void areOneInstrument(int notation, int tablature, String part) throws ScoreException {
        PartText upper = part("One", notation, attributes(FOUR_FOUR), line("E5", "G5", "D5"));
        PartText lower = part("Two", tablature, attributes(FOUR_FOUR + tabClef(1)), LINE);
        assertThat(read(score(upper, lower)).solo().part().id()).isEqualTo(part);
    }

    @Test
    void areEachPairedWithTheirOwn() throws ScoreException {
        PartText second = tablature(
                "Second TAB", fretted(1, 5, QUARTER) + fretted(1, 8, QUARTER) + fretted(1, 3, QUARTER) + rest(QUARTER));
        PartText secondNotation = notation("Second", "A5", "C6", "G5");
        Reading reading = read(score(NOTATION, TABLATURE, secondNotation, second), "Second");
        assertThat(reading.solo().notes())
                .extracting(note -> note.at().orElseThrow().toString())
                .containsExactly("1/5", "1/8", "1/3");
        assertThat(read(score(NOTATION, TABLATURE, secondNotation, second), "Lead")
                        .solo()
                        .notes()
                        .get(1)
                        .bend())
                .isPresent();
    }

    private static PartText notation(String name, String... pitches) {
        return part(name, attributes(FOUR_FOUR), line(pitches));
    }

    private static PartText tablature(String name, String line) {
        return part(name, attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING)), line);
    }

    private static String line(String... pitches) {
        StringBuilder line = new StringBuilder();
        for (String pitch : pitches) {
            line.append(note(pitch, QUARTER));
        }
        return line.append(rest(QUARTER)).toString();
    }
}
