package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;

class StrangersTest {

    private static final String NOTE = note("A4", 4 * QUARTER);

    @Test
    void areToldOnceForEachNameWithTheFirstBarAndTheirCount() throws ScoreException {
        String glowing = with("<glow/>", NOTE);
        assertThat(notices(notation(NOTE, glowing + "<spark/>", glowing)))
                .contains(
                        "the element <glow> is not understood here and is passed over (2 times, first in bar 2)",
                        "the element <spark> is not understood here and is passed over (bar 2)");
    }

    @Test
    void areToldWithoutWhatStandsInThem() throws ScoreException {
        assertThat(notices(notation("<box><ribbon><pitch/></ribbon></box>" + NOTE + "<ribbon/>")))
                .contains(
                        "the element <box> is not understood here and is passed over (bar 1)",
                        "the element <ribbon> is not understood here and is passed over (bar 1)");
    }

    @Test
    void inTheHeadingStandInNoBar() throws ScoreException {
        String score = notation(NOTE).replace("<part-list>", "<seal/><part-list>");
        assertThat(notices(score)).contains("the element <seal> is not understood here and is passed over");
    }

    @Test
    void areNotListedByTheHundred() throws ScoreException {
        String many = IntStream.range(0, 300).mapToObj(i -> "<e" + i + "/>").collect(Collectors.joining());
        assertThat(notices(notation(NOTE + many)))
                .filteredOn(notice -> notice.contains("passed over"))
                .hasSize(9)
                .last()
                .isEqualTo("further elements are not understood and are passed over (292 times, first in bar 1)");
    }

    @Test
    void elementsOfTheSchemaAreNone() throws ScoreException {
        String known = "<direction><direction-type><words>slowly</words></direction-type></direction><print/>";
        assertThat(notices(notation(known + NOTE))).noneMatch(notice -> notice.contains("not understood"));
    }
}
