package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.STANDARD_TUNING;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.details;
import static org.fretgloss.annotator.read.Scores.element;
import static org.fretgloss.annotator.read.Scores.length;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.pitch;
import static org.fretgloss.annotator.read.Scores.place;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.tabClef;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tunings and capos that a score does not mention, found from its pitches. The tunings are common practice, no source. */
class UndeclaredTuningTest {

    private static final int NOTES = 40;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "E4 B3 G3 D3 A2 E2",
                "E4 B3 G3 D3 A2 D2",
                "E♭4 B♭3 G♭3 D♭3 A♭2 E♭2",
                "D4 A3 F3 C3 G2 D2",
                "D♯4 A♯3 F♯3 C♯3 G♯2 C♯2",
                "D4 A3 F3 C3 G2 C2",
                "D4 B3 G3 D3 G2 D2",
                "D4 A3 F♯3 D3 A2 D2",
                "E4 B3 G♯3 E3 B2 E2",
                "E4 C♯4 A3 E3 A2 E2",
                "D4 A3 G3 D3 A2 D2",
                "B3 F♯3 D3 A2 E2 B1",
                "E4 B3 G3 D3 A2 E2 B1",
                "E4 B3 G3 D3 A2 E2 A1",
                "E4 B3 G3 D3 A2 E2 B1 F♯1",
                "G2 D2 A1 E1",
                "G2 D2 A1 E1 B0",
                "A4 E4 C4 G4",
                "D4 B3 G3 D3 G4"
            })
    void isFoundWhateverTheOctaveAndASlipInTwenty(String strings) throws ScoreException {
        Tuning tuning = Tuning.of(strings);
        for (int octaves = 0; octaves <= 1; octaves++) {
            String lines = "<staff-lines>" + tuning.size() + "</staff-lines>";
            String score = partwise(
                    attributes(FOUR_FOUR + tabClef(1) + details("", lines)),
                    played(tuning, 12 * octaves, NOTES / 20, tuning.size()));
            assertThat(read(score).solo().tuning()).isEqualTo(tuning);
        }
    }

    @Test
    void isStandardWhereMoreThanASlipInTwentySpeaksAgainstAllOthers() throws ScoreException {
        Tuning dropD = Tuning.of("E4 B3 G3 D3 A2 D2");
        String score = partwise(attributes(FOUR_FOUR + tabClef(1)), played(dropD, 0, 5, 6));
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD);
    }

    @Test
    void isAFewerStringedOneOnlyIfNoGuitarFits() throws ScoreException {
        Tuning bass = Tuning.of("G2 D2 A1 E1");
        String beginning = attributes(FOUR_FOUR + tabClef(1));
        assertThat(read(partwise(beginning, played(bass, 0, 0, 4))).solo().tuning())
                .isEqualTo(bass);
        assertThat(read(partwise(beginning, played(Tuning.STANDARD, 0, 0, 4)))
                        .solo()
                        .tuning())
                .isEqualTo(Tuning.STANDARD);
    }

    /** Semitones that all notes stand above their frets in the declared tuning; the second number is the capo's fret. */
    @ParameterizedTest
    @CsvSource({"0, 0", "12, 0", "-12, 0", "1, 1", "2, 2", "7, 7", "14, 2", "19, 7", "13, 1"})
    void mayHaveACapo(int offset, int capo) throws ScoreException {
        String score = declared("", played(Tuning.STANDARD, offset, 1, 6));
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD.withCapo(capo));
    }

    @ParameterizedTest
    @CsvSource({"-1, 1, E♭4", "11, 1, E♭4", "-2, 2, D4", "10, 2, D4", "-3, 3, C♯4", "-5, 5, B3"})
    void mayBeLowerThanTheScoreSays(int offset, int lower, String first) throws ScoreException {
        Tuning tuning =
                read(declared("", played(Tuning.STANDARD, offset, 1, 6))).solo().tuning();
        assertThat(tuning.strings().get(0)).hasToString(first);
        assertThat(tuning.strings())
                .extracting(Pitch::midi)
                .isEqualTo(Tuning.STANDARD.strings().stream()
                        .map(open -> open.midi() - lower)
                        .toList());
    }

    /** W3C MusicXML 4.0 reference, transpose: what must be added to a written pitch to get a sounding one. */
    @Test
    void isNotMadeUpWhereTheTranspositionExplainsTheDistance() throws ScoreException {
        String down = "<transpose><chromatic>-2</chromatic></transpose>";
        String line = played(Tuning.STANDARD, 2, 0, 6);
        assertThat(read(declared(down, line)).solo().tuning()).isEqualTo(Tuning.STANDARD);
    }

    @Test
    void isNotMadeUpWhereTheScoreSaysThereIsNoCapoOrFewNotesTell() throws ScoreException {
        String line = played(Tuning.STANDARD, 2, 0, 6);
        String none = partwise(attributes(FOUR_FOUR + details("", STANDARD_TUNING + "<capo>0</capo>")), line);
        assertThat(read(none).solo().tuning()).isEqualTo(Tuning.STANDARD);
        assertThat(read(declared("", written(new StringFret(2, 5), 66))).solo().tuning())
                .isEqualTo(Tuning.STANDARD);
    }

    /** Exporters write bent notes at their start or at their peak. */
    @Test
    void isNeitherToldNorContradictedByPeaks() throws ScoreException {
        String bent = element(pitch(Pitch.parse("A4")) + length(QUARTER), place(2, 8) + Scores.bend("2"), "");
        String line = played(Tuning.STANDARD.withCapo(1), 0, 0, 6);
        assertThat(read(declared("", line + bent.repeat(NOTES / 4)))
                        .solo()
                        .tuning()
                        .capo())
                .isEqualTo(1);
        assertThat(read(declared("", bent.repeat(NOTES))).solo().tuning()).isEqualTo(Tuning.STANDARD);
    }

    @Test
    void changesInMidScore() throws ScoreException {
        Tuning dropD = Tuning.of("E4 B3 G3 D3 A2 D2");
        String score = partwise(
                attributes(FOUR_FOUR + tabClef(1) + details("", STANDARD_TUNING)),
                played(Tuning.STANDARD, 12, 0, 6),
                attributes(details("", Scores.tuning("D2", "A2", "D3", "G3", "B3", "E4"))) + played(dropD, 12, 0, 6));
        List<Note> notes = read(score).solo().notes();
        assertThat(notes).hasSize(2 * NOTES);
        assertThat(notes).allSatisfy(note -> {
            Tuning inForce = note.index() < NOTES ? Tuning.STANDARD : dropD;
            assertThat(note.midi()).isEqualTo(inForce.midi(note.at().orElseThrow()));
            assertThat(note.written().offset()).isEqualTo(12);
        });
        assertThat(read(score).solo().tuning()).isEqualTo(Tuning.STANDARD);
    }

    private static String declared(String transposition, String bar) {
        return partwise(attributes(FOUR_FOUR + details("", STANDARD_TUNING) + transposition), bar);
    }

    /** A line over all strings, some of it written a semitone wrong. */
    private static String played(Tuning tuning, int offset, int slips, int strings) {
        Random random = new Random(7);
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < NOTES; i++) {
            StringFret at = new StringFret(1 + i % strings, random.nextInt(15));
            notes.add(written(at, tuning.midi(at) + offset + (i < slips ? 1 : 0)));
        }
        return String.join("", notes);
    }

    private static String written(StringFret at, int midi) {
        return element(pitch(Pitch.ofMidi(midi)) + length(QUARTER), place(at.string(), at.fret()), "");
    }
}
