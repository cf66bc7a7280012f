package org.fretgloss.annotator.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fretgloss.annotator.file.ScoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A score in which every number stands that the reader uses; each of them in turn is made unusable. The score is read, and
 * one notice names the value and the bar; or it is refused, and the refusal names them.
 */
class UnusableNumbersTest {

    private static final List<String> NO_NUMBERS = List.of("NaN", "abc", "", "½", "-99999999999", "1e2000000000");

    private static final String SCORE = """
            <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Lead</part-name>
            <midi-instrument id="I1"><midi-channel>1</midi-channel><midi-program>30</midi-program></midi-instrument>
            </score-part></part-list><part id="P1"><measure number="1">
            <attributes><divisions>2</divisions><key number="1"><fifths>1</fifths></key>
            <time number="1"><beats>4</beats><beat-type>4</beat-type></time><staves>1</staves>
            <clef number="1"><sign>TAB</sign><clef-octave-change>-1</clef-octave-change></clef>
            <staff-details number="1"><staff-lines>4</staff-lines>
            <staff-tuning line="1"><tuning-step>E</tuning-step><tuning-alter>0</tuning-alter><tuning-octave>1</tuning-octave></staff-tuning>
            <staff-tuning line="2"><tuning-step>A</tuning-step><tuning-octave>1</tuning-octave></staff-tuning>
            <staff-tuning line="3"><tuning-step>D</tuning-step><tuning-octave>2</tuning-octave></staff-tuning>
            <staff-tuning line="4"><tuning-step>G</tuning-step><tuning-octave>2</tuning-octave></staff-tuning>
            <capo>2</capo></staff-details>
            <transpose number="1"><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>
            <measure-style><multiple-rest>1</multiple-rest></measure-style></attributes>
            <harmony><root><root-step>A</root-step><root-alter>0</root-alter></root><kind>dominant</kind>
            <bass><bass-step>E</bass-step><bass-alter>0</bass-alter></bass>
            <degree><degree-value>9</degree-value><degree-alter>0</degree-alter><degree-type>add</degree-type></degree>
            <frame><frame-strings>4</frame-strings><frame-frets>4</frame-frets>
            <frame-note><string>1</string><fret>2</fret></frame-note></frame><offset>0</offset></harmony>
            <harmony><numeral><numeral-root>5</numeral-root><numeral-alter>0</numeral-alter>
            <numeral-key><numeral-fifths>0</numeral-fifths><numeral-mode>major</numeral-mode></numeral-key></numeral>
            <kind>major</kind><offset>2</offset></harmony>
            <direction><direction-type><words>calm</words></direction-type><offset>1</offset></direction>
            <direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>90</per-minute></metronome></direction-type></direction>
            <sound tempo="96"><offset>4</offset></sound>
            <note><pitch><step>A</step><alter>0</alter><octave>2</octave></pitch><duration>2</duration><type>quarter</type>
            <time-modification><actual-notes>1</actual-notes><normal-notes>1</normal-notes></time-modification>
            <staff>1</staff><notations><technical><string>2</string><fret>10</fret>
            <bend><bend-alter>2</bend-alter></bend></technical></notations></note>
            <forward><duration>2</duration></forward><backup><duration>4</duration></backup>
            <note><pitch><step>E</step><octave>2</octave></pitch><duration>8</duration><type>whole</type>
            <notations><technical><string>3</string><fret>0</fret></technical></notations></note>
            </measure></part></score-partwise>
            """;

    /** Every text and attribute of the score that is a number, but for what nobody reads as one: a bar's number may be any text. */
    private static final Pattern NUMBER = Pattern.compile(
            "<(?!frame-)([a-z-]+)[^<>]*>(-?\\d+)<|<(?!measure)([a-z-]+) (?:number|line|tempo)=\"(\\d+)\"");

    @Test
    void areNoneInTheScoreAsItIs() throws ScoreException {
        assertThat(notices(SCORE)).noneMatch(notice -> notice.contains("value '") || notice.contains("cannot be"));
    }

    @ParameterizedTest(name = "{0}: ''{1}''")
    @MethodSource("planted")
    void areToldOnceWithValueAndBar(String where, String value, String score) {
        boolean inTheHeading = where.startsWith("midi-");
        List<String> naming = said(score).stream()
                .filter(text -> text.contains("'" + shown(where, value) + "'"))
                .toList();
        assertThat(naming).as(where).hasSize(1);
        assertThat(naming.get(0)).matches(inTheHeading ? "[^()]+" : ".*\\bbar 1\\b.*");
    }

    static Stream<Object[]> planted() {
        return NUMBER.matcher(SCORE).results().flatMap(place -> {
            int group = place.group(2) == null ? 4 : 2;
            String name = place.group(group - 1);
            return NO_NUMBERS.stream().map(value -> new Object[] {
                name,
                value,
                new StringBuilder(SCORE)
                        .replace(place.start(group), place.end(group), value)
                        .toString()
            });
        });
    }

    /** A time signature is one thing to a musician. */
    private static String shown(String where, String value) {
        return switch (where) {
            case "beats" -> value + "/4";
            case "beat-type" -> "4/" + value;
            default -> value;
        };
    }

    private static List<String> said(String score) {
        try {
            return notices(score);
        } catch (ScoreException e) {
            return List.of(e.getMessage());
        }
    }

    private static List<String> notices(String score) throws ScoreException {
        return Scores.notices(score);
    }

    @Test
    void standInTheScore() {
        Matcher number = NUMBER.matcher(SCORE);
        assertThat(number.results().map(place -> place.group(1) == null ? place.group(3) : place.group(1)))
                .contains(
                        "duration",
                        "divisions",
                        "octave",
                        "alter",
                        "fifths",
                        "beats",
                        "beat-type",
                        "per-minute",
                        "sound")
                .contains("chromatic", "octave-change", "clef-octave-change", "capo", "staff", "staves", "staff-tuning")
                .contains("root-alter", "bass-alter", "degree-value", "degree-alter", "numeral-root", "offset")
                .contains("bend-alter", "string", "fret", "actual-notes", "normal-notes", "multiple-rest");
    }
}
