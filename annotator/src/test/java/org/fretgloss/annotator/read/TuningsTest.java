package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.fretted;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.pitch;
import static org.fretgloss.annotator.read.Scores.place;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.tabClef;
import static org.fretgloss.annotator.read.Scores.tuning;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TuningsTest {

    /** MIDI numbers of the open strings, string 1 first (common practice, no source). */
    private static final List<Integer> STANDARD_MIDI = List.of(64, 59, 55, 50, 45, 40);

    @Test
    void countsLinesFromTheBottomAsTheSchemaDoes() throws ScoreException {
        Tuning tuning = tuningOf(tuning("E2", "A2", "D3", "G3", "B3", "E4"), fretted(6, 3, QUARTER));
        assertThat(tuning.strings()).extracting(Pitch::midi).isEqualTo(STANDARD_MIDI);
    }

    @Test
    void seesThatLinesAreCountedFromTheTop() throws ScoreException {
        Tuning tuning = tuningOf(tuning("E4", "B3", "G3", "D3", "A2", "E2"), fretted(6, 3, QUARTER));
        assertThat(tuning.strings()).extracting(Pitch::midi).isEqualTo(STANDARD_MIDI);
    }

    /** The drone of a five-string banjo is higher than its first string; only the notes tell the order. */
    @Test
    void letsTheNotesDecideTheOrderOfAReentrantTuning() throws ScoreException {
        String banjo = tuning("G4", "D3", "G3", "B3", "D4");
        String first = element(pitch(Pitch.parse("E4")) + length(QUARTER), place(1, 2), "");
        String fifth = element(pitch(Pitch.parse("G4")) + length(QUARTER), place(5, 0), "");
        assertThat(names(tuningOf(banjo, first + fifth))).isEqualTo("D4 B3 G3 D3 G4");
    }

    @ParameterizedTest
    @CsvSource({
        "E4 B3 G3 D3 A2 D2",
        "E♭4 B♭3 G♭3 D♭3 A♭2 E♭2",
        "E4 B3 G3 D3 A2 E2 B1",
        "E4 B3 G3 D3 A2 E2 B1 F♯1",
        "G2 D2 A1 E1",
        "G2 D2 A1 E1 B0"
    })
    void readsAnyTuningOfFourToEightStrings(String strings) throws ScoreException {
        List<Pitch> fromTop = Tuning.of(strings).strings();
        String[] lines = new String[fromTop.size()];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = fromTop.get(lines.length - 1 - i).toString();
        }
        String low = element(pitch(fromTop.get(lines.length - 1)) + length(QUARTER), place(lines.length, 0), "");
        assertThat(names(tuningOf(tuning(lines), low))).isEqualTo(strings);
    }

    @Test
    void takesStandardTuningAndSaysSo() throws ScoreException {
        String score = partwise(attributes(FOUR_FOUR + tabClef(1)), fretted(2, 8, QUARTER));
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD);
        assertThat(notices(score))
                .contains("the score does not say how the strings are tuned, so standard tuning is taken: E A D G B E");
    }

    @Test
    void saysNothingOfTuningsWhereNoFretsStand() throws ScoreException {
        assertThat(notices(notation(note("A4", QUARTER)))).isEmpty();
    }

    @Test
    void takesTheStandardTuningOfAsManyStringsAsAreUsed() throws ScoreException {
        String seventh = element(pitch(Pitch.parse("B1")) + length(QUARTER), place(7, 0), "");
        assertThat(read(notation(seventh)).solo().tuning().size()).isEqualTo(7);
        String bass = partwise(
                attributes(FOUR_FOUR + tabClef(1) + details("", "<staff-lines>4</staff-lines>")),
                element(pitch(Pitch.parse("E1")) + length(QUARTER), place(4, 0), ""));
        assertThat(names(read(bass).solo().tuning())).isEqualTo("G2 D2 A1 E1");
    }

    /** W3C MusicXML 4.0, staff-tuning: the octave is required. */
    @Test
    void passesOverATuningWithoutAnOctave() throws ScoreException {
        String bare = STANDARD_TUNING.replaceFirst("<tuning-octave>2</tuning-octave>", "");
        String score = partwise(attributes(FOUR_FOUR + tabClef(1) + details("", bare)), fretted(2, 8, QUARTER));
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD);
        assertThat(notices(score))
                .contains(
                        "<tuning-octave> is missing from <staff-tuning>, so the tuning is passed over (bar 1)",
                        "the tuning in the score cannot be used, so standard tuning is taken: E A D G B E");
    }

    @Test
    void refusesToGuessAHalfWrittenTuning() throws ScoreException {
        String half =
                "<staff-tuning line=\"6\"><tuning-step>E</tuning-step><tuning-octave>4</tuning-octave></staff-tuning>";
        String score = partwise(attributes(FOUR_FOUR + tabClef(1) + details("", half)), fretted(2, 8, QUARTER));
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD);
        assertThat(notices(score))
                .contains(
                        "the tuning in the score says nothing of lines 1, 2, 3, 4, 5, so it is passed over (bar 1)",
                        "the tuning in the score cannot be used, so standard tuning is taken: E A D G B E");
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "3, 3", "77, 0", "x, 0", "-2, 0"})
    void readsTheCapo(String written, int capo) throws ScoreException {
        String score = partwise(
                attributes(
                        FOUR_FOUR + tabClef(1) + details("", Scores.STANDARD_TUNING + "<capo>" + written + "</capo>")),
                fretted(2, 8, QUARTER));
        assertThat(read(score).solo().tuning().capo()).isEqualTo(capo);
    }

    private static Tuning tuningOf(String tuning, String bar) throws ScoreException {
        return read(partwise(attributes(FOUR_FOUR + tabClef(1) + details("", tuning)), bar))
                .solo()
                .tuning();
    }

    private static String names(Tuning tuning) {
        return String.join(" ", tuning.strings().stream().map(Pitch::toString).toList());
    }
}
