package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.with;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    @ParameterizedTest
    @CsvSource({"21, 1 more kind of", "320, 300 more kinds of", "2000, more than 1000 more kinds of"})
    void areNotListedByTheHundred(int many, String more) throws ScoreException {
        String strangers =
                IntStream.range(0, many).mapToObj(i -> "<e" + i + "/>").collect(Collectors.joining());
        assertThat(notices(notation(NOTE + strangers)))
                .filteredOn(notice -> notice.contains("passed over"))
                .hasSize(21)
                .last(STRING)
                .startsWith("and " + more)
                .endsWith(" passed over (bar 1)");
    }

    @Test
    void areShownShortAndWithoutTheWhiteSpaceAround() throws ScoreException {
        String note = NOTE.replace("</note>", "<stem> " + "up".repeat(30) + "\n</stem></note>");
        assertThat(note).isNotEqualTo(NOTE);
        assertThat(notices(notation(note)))
                .contains("the value '" + "up".repeat(20) + "…' of <stem> is not understood here and is passed over"
                        + " (bar 1)");
        assertThat(notices(notation(NOTE.replace("</note>", "<stem> up\n</stem></note>"))))
                .noneMatch(notice -> notice.contains("not understood"));
    }

    @Test
    void emptyValuesSayNothing() throws ScoreException {
        assertThat(notices(
                        notation(NOTE.replace("</note>", "<stem/></note>").replace("<note>", "<note pizzicato=''>"))))
                .noneMatch(notice -> notice.contains("not understood"));
    }

    @Test
    void elementsOfTheSchemaAreNone() throws ScoreException {
        String known = "<direction><direction-type><words>slowly</words></direction-type></direction><print/>";
        assertThat(notices(notation(known + NOTE))).noneMatch(notice -> notice.contains("not understood"));
    }
}
