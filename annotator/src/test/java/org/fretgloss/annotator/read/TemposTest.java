package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.read;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Tempo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemposTest {

    private static final String FULL = note("A4", 4 * QUARTER);

    @ParameterizedTest(name = "{0} with {1} dots = {2} is {3} quarters a minute")
    @CsvSource({"quarter, 0, 120, 120", "quarter, 1, 60, 90", "half, 0, 72, 144", "eighth, 0, 100.5, 50.25"})
    void readsMetronomeMarks(String unit, int dots, String number, double quarters) throws ScoreException {
        assertThat(tempos(notation(metronome(unit, dots, number) + FULL)))
                .containsExactly(new Tempo(Fraction.ZERO, quarters));
    }

    @Test
    void believesWhatIsPlayedBeforeWhatIsPrinted() throws ScoreException {
        String both = metronome("quarter", 0, "120").replace("</direction>", "<sound tempo=\"96\"/></direction>");
        assertThat(tempos(notation(both + FULL))).containsExactly(new Tempo(Fraction.ZERO, 96));
    }

    @Test
    void readsChangesWhereTheyStand() throws ScoreException {
        String bar = note("A4", QUARTER) + "<sound tempo=\"80\"/>" + note("A4", QUARTER);
        assertThat(tempos(notation("<sound tempo=\"100\"/>" + FULL, bar)))
                .containsExactly(new Tempo(Fraction.ZERO, 100), new Tempo(Fraction.of(5), 80));
    }

    @ParameterizedTest
    @CsvSource({"0", "-10", "1e9", "fast", "c. 120", "''", "NaN"})
    void leavesOutWhatIsNoTempo(String number) throws ScoreException {
        assertThat(tempos(notation(metronome("quarter", 0, number) + FULL))).isEmpty();
        assertThat(tempos(notation("<sound tempo=\"" + number + "\"/>" + FULL))).isEmpty();
    }

    private static String metronome(String unit, int dots, String number) {
        return ("<direction><direction-type><metronome><beat-unit>%s</beat-unit>%s<per-minute>%s</per-minute></metronome>"
                        + "</direction-type></direction>")
                .formatted(unit, "<beat-unit-dot/>".repeat(dots), number);
    }

    private static List<Tempo> tempos(String score) throws ScoreException {
        return read(score).solo().tempos();
    }
}
