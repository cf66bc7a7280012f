package org.fretgloss.annotator.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.slips.TrapScore.TUNING;
import static org.fretgloss.annotator.slips.TrapScore.bar;
import static org.fretgloss.annotator.slips.TrapScore.bend;
import static org.fretgloss.annotator.slips.TrapScore.doubts;
import static org.fretgloss.annotator.slips.TrapScore.note;
import static org.fretgloss.annotator.slips.TrapScore.plain;
import static org.fretgloss.annotator.slips.TrapScore.score;
import static org.fretgloss.annotator.slips.TrapScore.struck;

import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Severity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ways of writing that look like slips to a hasty reader, and that the small notation of the rules' pages cannot write:
 * repeats, voices, staves, dialects of bends. Each stands after a bar of plain notes, in 4/4, at one division a quarter.
 * What programs write here is common practice, no source.
 */
class SilentTrapsTest {

    private static final String C_AND_D = plain("C", 4, 5, 2) + plain("D", 4, 7, 2);

    static Stream<Arguments> traps() {
        return Stream.of(
                Arguments.of(
                        "a bar before a repeat sign is a part of one",
                        bar(
                                2,
                                plain("C", 4, 5, 3)
                                        + "<barline location=\"right\"><repeat direction=\"backward\"/></barline>")),
                Arguments.of(
                        "a bar that is not counted completes the one before it",
                        bar(2, plain("C", 4, 5, 3)) + "<measure number=\"X1\" implicit=\"yes\">" + plain("D", 4, 7, 1)
                                + "</measure>"),
                Arguments.of(
                        "a grace note that steals the time before it",
                        bar(
                                2,
                                plain("C", 4, 5, 2)
                                        + plain("C", 4, 5, 2)
                                                .replace("<duration>2</duration>", "")
                                                .replace("<note>", "<note><grace steal-time-previous=\"50\"/>")
                                        + plain("D", 4, 7, 2))),
                Arguments.of(
                        "a grace note with a length, which the note before it lacks",
                        bar(2, half("C", 5, 1) + grace("C", 5, 1) + half("D", 7, 2))),
                Arguments.of(
                        "a grace note with a length, which the note after it lacks",
                        bar(2, half("C", 5, 2) + grace("C", 5, 1) + half("D", 7, 1))),
                Arguments.of(
                        "a tie that goes on in another voice",
                        bar(
                                2,
                                note("C", 4, 5, 2, "", "<tie type=\"start\"/><voice>1</voice>")
                                        + "<forward><duration>2</duration></forward><backup><duration>2</duration></backup>"
                                        + note("C", 4, 5, 2, "", "<tie type=\"stop\"/><voice>2</voice>"))),
                Arguments.of(
                        "a tie into a repeat",
                        bar(
                                2,
                                plain("C", 4, 5, 2)
                                        + note("D", 4, 7, 2, "", "<tie type=\"start\"/>")
                                        + "<barline location=\"right\"><repeat direction=\"backward\"/></barline>")),
                Arguments.of(
                        "two ties at once, paired by string",
                        bar(
                                2,
                                note("C", 4, 5, 2, "", "<tie type=\"start\"/>")
                                        + struck("<chord/>", "E", 4, 2, 5, 2, "", "<tie type=\"start\"/>")
                                        + struck("", "E", 4, 2, 5, 2, "", "<tie type=\"stop\"/>")
                                        + struck("<chord/>", "C", 4, 3, 5, 2, "", "<tie type=\"stop\"/>"))),
                Arguments.of(
                        "hammer-ons of a chord that share one number",
                        bar(
                                2,
                                note("C", 4, 5, 2, hammer("start"), "")
                                        + struck("<chord/>", "E", 4, 2, 5, 2, hammer("start"), "")
                                        + note("D", 4, 7, 2, hammer("stop"), "")
                                        + struck("<chord/>", "G", 4, 2, 8, 2, hammer("stop"), ""))),
                Arguments.of(
                        "a release that is written as what is left of the bend",
                        bar(2, note("D", 4, 7, 4, bend("2", "") + bend("0", "<release/>"), ""))),
                Arguments.of(
                        "a release that is written as a movement",
                        bar(2, note("D", 4, 7, 4, bend("2", "") + bend("-2", "<release/>"), ""))),
                Arguments.of(
                        "a bend that is held into a tied note, and written again there",
                        bar(
                                2,
                                note("D", 4, 7, 2, bend("2", ""), "<tie type=\"start\"/>")
                                        + note("D", 4, 7, 2, bend("2", ""), "<tie type=\"stop\"/>"))),
                Arguments.of(
                        "a bend with the bar on an open string",
                        bar(2, note("G", 3, 0, 4, bend("6", "<with-bar>dip</with-bar>"), ""))),
                Arguments.of(
                        "one note in two voices",
                        bar(
                                2,
                                note("C", 4, 5, 4, "", "<voice>1</voice>")
                                        + "<backup><duration>4</duration></backup>"
                                        + note("C", 4, 5, 4, "", "<voice>2</voice>"))));
    }

    /** Printed as a half note, however long the file says that it lasts. */
    private static String half(String step, int fret, int quarters) {
        return plain(step, 4, fret, quarters).replace("<notations>", "<type>half</type><notations>");
    }

    /** With a length, which a grace note cannot have. */
    private static String grace(String step, int fret, int quarters) {
        return plain(step, 4, fret, quarters).replace("<note>", "<note><grace/>");
    }

    private static String hammer(String type) {
        return "<hammer-on type=\"" + type + "\" number=\"1\"/>";
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("traps")
    void staySilent(String name, String bars) throws ScoreException {
        assertThat(doubts(score(TUNING, C_AND_D, bars), Severity.WARNING))
                .as(name)
                .isEmpty();
    }

    /** The template itself raises no doubt, and a slip in it does. */
    @ParameterizedTest
    @MethodSource("slips")
    void slipsSpeak(String check, String bars) throws ScoreException {
        assertThat(doubts(score(TUNING, C_AND_D, bars), Severity.WARNING))
                .extracting(Gloss::rule)
                .containsExactly(check);
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of("bar-length", bar(2, plain("C", 4, 5, 3)) + bar(3, C_AND_D)),
                Arguments.of("tie", bar(2, C_AND_D) + bar(3, note("C", 4, 5, 4, "", "<tie type=\"start\"/>"))),
                Arguments.of("bend-width", bar(2, note("G", 3, 0, 4, bend("6", ""), ""))),
                Arguments.of(
                        "tie",
                        bar(
                                2,
                                C_AND_D.replace("<notations>", "<tie type=\"start\"/><notations>")
                                        .replaceFirst("(?s)(.*)<tie type=\"start\"/>", "$1<tie type=\"stop\"/>"))),
                Arguments.of("bend-width", bar(2, note("D", 4, 7, 4, bend("0", "<release/>"), ""))),
                Arguments.of(
                        "bend-width",
                        bar(2, note("D", 4, 7, 4, bend("2", "") + "<other-technical>1/2</other-technical>", ""))),
                Arguments.of("off-neck", bar(2, plain("C", 4, -2, 4))),
                Arguments.of("off-neck", bar(2, struck("", "C", 4, 8, 5, 4, "", ""))),
                Arguments.of("same-string", bar(2, plain("C", 4, 5, 4) + struck("<chord/>", "D", 4, 3, 7, 4, "", ""))));
    }
}
