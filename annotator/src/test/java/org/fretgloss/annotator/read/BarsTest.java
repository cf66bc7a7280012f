package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.read.Scores.FOUR_FOUR;
import static org.fretgloss.annotator.read.Scores.QUARTER;
import static org.fretgloss.annotator.read.Scores.attributes;
import static org.fretgloss.annotator.read.Scores.backup;
import static org.fretgloss.annotator.read.Scores.bar;
import static org.fretgloss.annotator.read.Scores.forward;
import static org.fretgloss.annotator.read.Scores.implicitBar;
import static org.fretgloss.annotator.read.Scores.notation;
import static org.fretgloss.annotator.read.Scores.note;
import static org.fretgloss.annotator.read.Scores.notes;
import static org.fretgloss.annotator.read.Scores.notices;
import static org.fretgloss.annotator.read.Scores.part;
import static org.fretgloss.annotator.read.Scores.partwise;
import static org.fretgloss.annotator.read.Scores.read;
import static org.fretgloss.annotator.read.Scores.rest;
import static org.fretgloss.annotator.read.Scores.score;
import static org.fretgloss.annotator.read.Scores.wholeBarRest;

import java.util.List;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarsTest {

    private static final String FULL = note("A4", 4 * QUARTER);

    @ParameterizedTest
    @CsvSource({"0, 0", "'', 0", "X1, 0", "1, 0"})
    void namesAnImplicitPickUpBarZero(String written, String named) throws ScoreException {
        List<Bar> bars = bars(notation(implicitBar(written, pickUp(attributes(FOUR_FOUR))), FULL));
        assertThat(bars.get(0).number()).isEqualTo(named);
        assertThat(bars.get(0).lead()).isEqualTo(Fraction.of(3));
        assertThat(bars.get(1).start()).isEqualTo(Fraction.ONE);
    }

    @Test
    void alignsAnUnmarkedShortFirstBarRight() throws ScoreException {
        String score = notation(note("A4", QUARTER), FULL);
        assertThat(bars(score).get(0).number()).isEqualTo("1");
        assertThat(notes(score).get(0).beat()).isEqualTo(Fraction.of(4));
        assertThat(notes(score).get(1).beat()).isEqualTo(Fraction.ONE);
    }

    @Test
    void countsTheSecondHalfOfASplitBarOn() throws ScoreException {
        String score = notation(FULL, note("A4", 3 * QUARTER), implicitBar("X1", note("B4", QUARTER)), FULL);
        assertThat(notes(score).get(2).beat()).isEqualTo(Fraction.of(4));
        assertThat(bars(score).get(2).number()).isEqualTo("X1");
    }

    @Test
    void takesAShortBarInMidScoreForNoPickUp() throws ScoreException {
        String short3 = note("A4", 3 * QUARTER);
        assertThat(bars(notation(FULL, short3, note("B4", QUARTER), FULL)))
                .extracting(Bar::isPickUp)
                .containsOnly(false);
        assertThat(bars(notation(FULL, short3, implicitBar("X1", note("B4", 2 * QUARTER)), FULL)))
                .extracting(Bar::isPickUp)
                .containsOnly(false);
    }

    @Test
    void countsInAnotherPartsMeterOnlyWhereItHasNone() throws ScoreException {
        String threeFour = "<time><beats>3</beats><beat-type>4</beat-type></time>";
        String solo = note("A4", 3 * QUARTER);
        String late = attributes("") + solo;
        assertThat(read(
                                score(
                                        part("Solo", attributes(""), solo, late),
                                        part("Keys", attributes(threeFour), solo)),
                                "Solo")
                        .solo()
                        .bars())
                .extracting(bar -> bar.meter().toString())
                .containsExactly("3/4", "3/4");
        assertThat(read(
                                score(
                                        part("Solo", attributes(FOUR_FOUR), FULL),
                                        part("Keys", attributes(threeFour), solo)),
                                "Solo")
                        .solo()
                        .bars())
                .extracting(bar -> bar.meter().toString())
                .containsExactly("4/4");
    }

    @Test
    void goesOnFromTheLongestVoice() throws ScoreException {
        String twoVoices = note("A4", 2 * QUARTER) + backup(2 * QUARTER) + note("E4", 5 * QUARTER);
        List<Bar> bars = bars(notation(FULL, twoVoices, note("A4", 3 * QUARTER), FULL));
        assertThat(bars.get(1).filled()).isEqualTo(Fraction.of(5));
        assertThat(bars.get(2).start()).isEqualTo(Fraction.of(9));
        assertThat(bars.get(2).isFull()).isFalse();
        assertThat(bars.get(3).start()).isEqualTo(Fraction.of(12));
    }

    @Test
    void lastsAsLongAsAnyPartSounds() throws ScoreException {
        String score = score(
                part("Solo", attributes(FOUR_FOUR), FULL, note("A4", QUARTER), FULL),
                part("Keys", attributes(FOUR_FOUR), FULL, FULL, FULL));
        List<Bar> bars = read(score, "Solo").solo().bars();
        assertThat(bars.get(1).length()).isEqualTo(Fraction.of(4));
        assertThat(bars.get(1).filled()).isEqualTo(Fraction.ONE);
        assertThat(bars.get(2).start()).isEqualTo(Fraction.of(8));
    }

    @Test
    void givesAnEmptyBarAndAWholeBarRestTheLengthOfTheMeter() throws ScoreException {
        String threeFour = "<time><beats>3</beats><beat-type>4</beat-type></time>";
        List<Bar> bars = bars(partwise(
                attributes(threeFour), note("A4", 3 * QUARTER), wholeBarRest(4 * QUARTER), "", wholeBarRest(QUARTER)));
        assertThat(bars).extracting(Bar::length).containsOnly(Fraction.of(3));
    }

    @ParameterizedTest(name = "{0} lasts {2} quarters with beats of {3}")
    @CsvSource({
        "4/4, 4/4, 4, 1",
        "12/8, 12/8, 6, 3/2",
        "3+2/8, 5/8, 5/2, 1/2",
        "2/4 3/8, 7/8, 7/2, 1/2",
        "7/16, 7/16, 7/4, 1/4"
    })
    void readsMeters(String written, String meter, String length, String beat) throws ScoreException {
        StringBuilder time = new StringBuilder("<time>");
        for (String term : written.split(" ", -1)) {
            String[] numbers = term.split("/", -1);
            time.append("<beats>%s</beats><beat-type>%s</beat-type>".formatted(numbers[0], numbers[1]));
        }
        Bar last = bars(partwise(attributes(time + "</time>"), FULL, "")).get(1);
        assertThat(last.meter()).hasToString(meter);
        assertThat(last.length()).isEqualTo(Fraction.parse(length));
        assertThat(last.meter().beatLength()).isEqualTo(Fraction.parse(beat));
    }

    @Test
    void readsChangesOfMeterAndKeyWhereTheyStand() throws ScoreException {
        String change = "<attributes><key><fifths>-3</fifths><mode>minor</mode></key>"
                + "<time><beats>6</beats><beat-type>8</beat-type></time></attributes>";
        String midBar = "<attributes><key><fifths>2</fifths></key></attributes>";
        List<Bar> bars = bars(notation(
                FULL, change + note("A4", QUARTER) + midBar + note("A4", 2 * QUARTER), note("A4", 3 * QUARTER)));
        assertThat(bars).extracting(bar -> bar.meter().toString()).containsExactly("4/4", "6/8", "6/8");
        assertThat(bars).extracting(bar -> bar.key().fifths()).containsExactly(0, -3, 2);
        assertThat(bars.get(1).key().mode()).contains("minor");
    }

    @Test
    void letsFreeMusicLastAsLongAsItSounds() throws ScoreException {
        List<Bar> bars = bars(partwise(
                attributes("<time><senza-misura/></time>"), note("A4", 7 * QUARTER + 6), note("A4", 2 * QUARTER)));
        assertThat(bars.get(0).length()).isEqualTo(Fraction.of(15, 2));
        assertThat(bars).extracting(Bar::lead).containsOnly(Fraction.ZERO);
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "4, 0", "x, 4", "4, 99999999999", "-3, 4"})
    void keepsTheMeterBeforeAnUnreadableOne(String beats, String unit) throws ScoreException {
        String unreadable =
                attributes("<time><beats>%s</beats><beat-type>%s</beat-type></time>".formatted(beats, unit));
        String first = partwise(unreadable, FULL);
        String later = partwise(attributes(FOUR_FOUR), FULL, unreadable + note("A4", 2 * QUARTER));
        String free = partwise(attributes("<time><senza-misura/></time>"), FULL, unreadable + FULL);
        String told = "the time signature '" + beats + "/" + unit + "' cannot be read, so ";

        assertThat(bars(first).get(0).meter()).hasToString("4/4");
        assertThat(bars(later).get(1).meter()).hasToString("4/4");
        assertThat(notices(first)).contains(told + "it is passed over (bar 1)");
        assertThat(notices(later)).contains(told + "the one before it stays in force (bar 2)");
        assertThat(notices(free)).contains(told + "the one before it stays in force (bar 2)");
    }

    @Test
    void countsOnWhereABarHasNoNumber() throws ScoreException {
        List<Bar> bars = bars(notation(bar("7", attributes(FOUR_FOUR) + FULL), "<measure>" + FULL + "</measure>"));
        assertThat(bars).extracting(Bar::number).containsExactly("7", "8");
    }

    @Test
    void knowsRepeats() throws ScoreException {
        String left = "<barline location=\"left\"><repeat direction=\"forward\"/></barline>";
        String right = "<barline location=\"right\"><repeat direction=\"backward\"/></barline>";
        List<Bar> bars = bars(notation(FULL, left + FULL, FULL + right, FULL));
        assertThat(bars).extracting(Bar::repeatsForward).containsExactly(false, true, false, false);
        assertThat(bars).extracting(Bar::repeatsBackward).containsExactly(false, false, true, false);
    }

    @Test
    void doesNotMoveTimeForGapsAtTheEnd() throws ScoreException {
        List<Bar> bars = bars(notation(note("A4", QUARTER) + forward(3 * QUARTER), rest(4 * QUARTER), FULL));
        assertThat(bars).extracting(Bar::start).containsExactly(Fraction.ZERO, Fraction.of(4), Fraction.of(8));
    }

    private static String pickUp(String beginning) {
        return beginning + note("A4", QUARTER);
    }

    private static List<Bar> bars(String score) throws ScoreException {
        return read(score).solo().bars();
    }
}
