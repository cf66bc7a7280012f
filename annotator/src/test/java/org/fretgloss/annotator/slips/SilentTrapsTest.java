package org.fretgloss.annotator.slips;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
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

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    private static final String TUNING = staffTuning(1, "E", 2)
            + staffTuning(2, "A", 2)
            + staffTuning(3, "D", 3)
            + staffTuning(4, "G", 3)
            + staffTuning(5, "B", 3)
            + staffTuning(6, "E", 4);

    private static String staffTuning(int line, String step, int octave) {
        return "<staff-tuning line=\"%d\"><tuning-step>%s</tuning-step><tuning-octave>%d</tuning-octave></staff-tuning>"
                .formatted(line, step, octave);
    }

    /** On string 3, where frets 0, 2, 4, 5, 7, 9 and 10 are naturals. */
    private static String note(String step, int octave, int fret, int quarters, String technical, String more) {
        return struck("", step, octave, 3, fret, quarters, technical, more);
    }

    private static String struck(
            String chord, String step, int octave, int string, int fret, int quarters, String technical, String more) {
        return """
                <note>%s<pitch><step>%s</step><octave>%d</octave></pitch><duration>%d</duration>%s<notations>\
                <technical><string>%d</string><fret>%d</fret>%s</technical></notations></note>""".formatted(chord, step, octave, quarters, more, string, fret, technical);
    }

    private static String plain(String step, int octave, int fret, int quarters) {
        return note(step, octave, fret, quarters, "", "");
    }

    private static String bend(String alter, String course) {
        return "<bend><bend-alter>" + alter + "</bend-alter>" + course + "</bend>";
    }

    private static String bar(int number, String content) {
        return "<measure number=\"" + number + "\">" + content + "</measure>";
    }

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

    private static String hammer(String type) {
        return "<hammer-on type=\"" + type + "\" number=\"1\"/>";
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("traps")
    void staySilent(String name, String bars) throws ScoreException {
        assertThat(doubts(score(bars), Severity.WARNING)).as(name).isEmpty();
    }

    /** The template itself raises no doubt, and a slip in it does. */
    @ParameterizedTest
    @MethodSource("slips")
    void slipsSpeak(String check, String bars) throws ScoreException {
        assertThat(doubts(score(bars), Severity.WARNING))
                .extracting(Gloss::rule)
                .containsExactly(check);
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of("bar-length", bar(2, plain("C", 4, 5, 3)) + bar(3, C_AND_D)),
                Arguments.of("tie", bar(2, C_AND_D) + bar(3, note("C", 4, 5, 4, "", "<tie type=\"start\"/>"))),
                Arguments.of("bend-width", bar(2, note("G", 3, 0, 4, bend("6", ""), ""))),
                Arguments.of("same-string", bar(2, plain("C", 4, 5, 4) + struck("<chord/>", "D", 4, 3, 7, 4, "", ""))));
    }

    private static List<Gloss> doubts(String text, Severity least) throws ScoreException {
        return FRETGLOSS
                .check(
                        ScoreFile.of("trap.musicxml", text.getBytes(StandardCharsets.UTF_8)),
                        new Request(Optional.empty(), Given.NOTHING),
                        rule -> true)
                .from(least)
                .glosses();
    }

    private static String score(String bars) {
        return """
                <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Guitar</part-name></score-part>\
                </part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>\
                <time><beats>4</beats><beat-type>4</beat-type></time>\
                <staff-details><staff-lines>6</staff-lines>%s</staff-details></attributes>%s</measure>%s</part>\
                </score-partwise>""".formatted(TUNING, C_AND_D, bars);
    }
}
