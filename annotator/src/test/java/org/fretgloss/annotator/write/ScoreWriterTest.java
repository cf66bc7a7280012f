package org.fretgloss.annotator.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.fretgloss.annotator.file.LyricSite;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.ScoreTexts;
import org.fretgloss.rule.Line;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreWriterTest {

    private static final Stamp STAMP = new Stamp("1.2.3", Map.of());

    private static String annotate(String text, LineText... texts) throws ScoreException {
        return ScoreWriter.annotate(ScoreScan.of(text), List.of(texts), STAMP, UTF_8);
    }

    @ParameterizedTest
    @DisplayName("what the encoding cannot hold becomes a character reference, and only that")
    @CsvSource({
        "US-ASCII,\u00BD \u266D3 \uD834\uDD1E,&#xBD; &#x266D;3 &#x1D11E;",
        "ISO-8859-1,\u00BD \u266D3 \uD834\uDD1E,\u00BD &#x266D;3 &#x1D11E;",
        "windows-1252,\u2026 \u266D,\u2026 &#x266D;",
        "UTF-8,\u00BD \u266D3 \uD834\uDD1E,\u00BD \u266D3 \uD834\uDD1E"
    })
    void characterReferences(Charset charset, String text, String written) throws ScoreException {
        String plain = ScoreTexts.partwise("<note><rest/></note>");

        String annotated =
                ScoreWriter.annotate(ScoreScan.of(plain), List.of(new LineText(Line.MOVES, 1, text)), STAMP, charset);

        assertThat(annotated).contains("<text>" + written + "</text>");
        assertThat(ScoreScan.of(annotated).ours())
                .singleElement()
                .satisfies(lyric -> assertThat(lyric.text()).isEqualTo(text));
        assertThat(Stripper.strip(annotated)).isEqualTo(new Stripped(plain, 1, Stripped.Edits.NONE));
    }

    private static LineText box(int element) {
        return new LineText(Line.BOX, element, "box 1 fr5");
    }

    /** The field's content aside, which holds a digest. */
    private static String withoutField(String annotated) {
        return annotated.replaceAll("\\{\"version.*?}(?=<)", "...");
    }

    @Test
    @DisplayName("an indented score gets indented lyrics and an indented field")
    void indented() throws ScoreException {
        String text = """
                <score-partwise version="4.0">
                  <part id="P1">
                    <measure number="1">
                      <note>
                        <duration>1</duration>
                        <notations/>
                      </note>
                    </measure>
                  </part>
                </score-partwise>
                """;

        assertThat(withoutField(annotate(text, box(1), new LineText(Line.MOVES, 1, "½ ♭3→3"))))
                .isEqualTo("""
                <score-partwise version="4.0">
                  <identification>
                    <miscellaneous>
                      <miscellaneous-field name="fretgloss">...</miscellaneous-field>
                    </miscellaneous>
                  </identification>
                  <part id="P1">
                    <measure number="1">
                      <note>
                        <duration>1</duration>
                        <notations/>
                        <lyric number="1" name="fretgloss:box">
                          <syllabic>single</syllabic>
                          <text>box 1 fr5</text>
                        </lyric>
                        <lyric number="2" name="fretgloss:moves">
                          <syllabic>single</syllabic>
                          <text>½ ♭3→3</text>
                        </lyric>
                      </note>
                    </measure>
                  </part>
                </score-partwise>
                """);
    }

    @Test
    @DisplayName("a score on one line stays on one line")
    void oneLine() throws ScoreException {
        assertThat(withoutField(annotate(ScoreTexts.partwise("<note><duration>1</duration><play/></note>"), box(1))))
                .contains("<score-partwise version=\"4.0\"><identification><miscellaneous>"
                        + "<miscellaneous-field name=\"fretgloss\">...</miscellaneous-field>"
                        + "</miscellaneous></identification><part-list>")
                .contains("<duration>1</duration><lyric number=\"1\" name=\"fretgloss:box\">"
                        + "<syllabic>single</syllabic><text>box 1 fr5</text></lyric><play/></note>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    @DisplayName("line ends are the file's own, tabs too")
    void lineEnds(String lineEnd) throws ScoreException {
        String text = ScoreTexts.partwise("~\t<note>~\t\t<rest/>~\t\t~\t</note>~".replace("~", lineEnd));

        assertThat(annotate(text, box(1)))
                .contains("<rest/>~\t\t<lyric number=\"1\" name=\"fretgloss:box\">~".replace("~", lineEnd))
                .contains("</lyric>~\t\t~\t</note>".replace("~", lineEnd));
    }

    @Test
    @DisplayName("an empty tag is opened by insertions only")
    void emptyTags() throws ScoreException {
        String bare = ScoreTexts.partwise("<note><rest/></note>");
        String identification = bare.replace("<part-list>", "<identification /><part-list>");
        String miscellaneous =
                bare.replace("<part-list>", "<identification><miscellaneous/></identification><part-list>");

        assertThat(withoutField(annotate(identification, box(1))))
                .contains("<identification ><miscellaneous><miscellaneous-field name=\"fretgloss\">..."
                        + "</miscellaneous-field></miscellaneous></identification><part-list>");
        assertThat(withoutField(annotate(miscellaneous, box(1))))
                .contains("<identification><miscellaneous><miscellaneous-field name=\"fretgloss\">..."
                        + "</miscellaneous-field></miscellaneous></identification><part-list>");
    }

    @Test
    @DisplayName("an identification goes after the titles and before everything else; our field goes last")
    void head() throws ScoreException {
        String titled = "<score-partwise><work/><movement-number>1</movement-number><movement-title>T</movement-title>"
                + "<defaults/><part-list/><part id='P1'><measure><note><rest/></note></measure></part></score-partwise>";
        String full = titled.replace(
                "<defaults/>",
                "<identification><rights/><miscellaneous><miscellaneous-field name='a'/></miscellaneous></identification>");

        assertThat(annotate(titled, box(1))).contains("</movement-title><identification>");
        assertThat(annotate(full, box(1)))
                .contains("<miscellaneous-field name='a'/><miscellaneous-field name=\"fretgloss\">");
    }

    @Test
    @DisplayName("the field says version, lines, settings and what was inserted around it, and escapes what XML must")
    void field() throws ScoreException {
        String annotated = ScoreWriter.annotate(
                ScoreScan.of(ScoreTexts.partwise("<note><rest/></note>")),
                List.of(box(1), new LineText(Line.DEGREES, 1, "5")),
                new Stamp("1.2.3", Map.of("chords", "A7 & <D7>\n\"E7\"")),
                UTF_8);

        String text = ScoreScan.of(annotated).header().fields().get(0).text();

        assertThat(FieldContent.parse(text)).hasValueSatisfying(content -> {
            assertThat(content.version()).isEqualTo("1.2.3");
            assertThat(content.lines()).containsExactly(Map.entry(1, "box"), Map.entry(2, "degrees"));
            assertThat(content.settings()).containsExactly(Map.entry("chords", "A7 & <D7>\n\"E7\""));
            assertThat(content.inserted()).containsExactly("identification", "miscellaneous");
            assertThat(content.opened()).isEmpty();
            assertThat(content.digest()).matches("[0-9a-f]{16}");
        });
    }

    @Test
    @DisplayName("numbers follow the highest digit in use in the part, in the order of lines")
    void numbers() throws ScoreException {
        String text = "<score-partwise><part-list/><part id='P1'><measure>"
                + "<note><rest/><lyric number='2'/><lyric number='12'/><lyric number='part2verse9'/><lyric/></note>"
                + "</measure></part><part id='P2'><measure><note><rest/><lyric number='7'/></note></measure></part>"
                + "</score-partwise>";

        ScoreScan scan = ScoreScan.of(annotate(text, new LineText(Line.SHAPE, 1, "space 5"), box(1)));

        assertThat(scan.ours()).extracting(LyricSite::digit).containsExactly(digit(3), digit(4));
        assertThat(scan.ours())
                .extracting(lyric -> lyric.ourLine().orElseThrow())
                .containsExactly("box", "shape");
    }

    @Test
    @DisplayName("a lyric without a number counts as 1")
    void missingNumber() throws ScoreException {
        ScoreScan scan = ScoreScan.of(annotate(ScoreTexts.partwise("<note><rest/><lyric/></note>"), box(1)));

        assertThat(scan.ours()).extracting(LyricSite::digit).containsExactly(digit(2));
    }

    @Test
    @DisplayName("numbers that are no single digit are ignored")
    void otherNumbers() throws ScoreException {
        String text = ScoreTexts.partwise("<note><rest/><lyric number='12'/><lyric number='verse'/></note>");

        assertThat(ScoreScan.of(annotate(text, box(1))).ours())
                .extracting(LyricSite::digit)
                .containsExactly(digit(1));
    }

    private static OptionalInt digit(int digit) {
        return OptionalInt.of(digit);
    }

    @Test
    @DisplayName("all nine lines fit under a part without lyrics")
    void nineLines() throws ScoreException {
        LineText[] texts = Arrays.stream(Line.values())
                .map(line -> new LineText(line, 1, "x"))
                .toArray(LineText[]::new);

        assertThat(ScoreScan.of(annotate(ScoreTexts.partwise("<note><rest/></note>"), texts))
                        .ours())
                .hasSize(9);
    }

    @Test
    @DisplayName("too few digits left: it says how many lines there is room for")
    void tooManyLines() {
        String eight = ScoreTexts.partwise("<note><rest/><lyric number='8'/></note>");
        String nine = ScoreTexts.partwise("<note><rest/><lyric number='9'/></note>");

        assertThatThrownBy(() -> annotate(eight, box(1), new LineText(Line.NOTES, 1, "6")))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("room for 1 line ")
                .hasMessageContaining("--lines");
        assertThatThrownBy(() -> annotate(nine, box(1)))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("all nine");
    }

    @Test
    @DisplayName("elements carry the prefix of the file's own")
    void prefix() throws ScoreException {
        String text = "<m:score-partwise xmlns:m='urn:m'><m:identification/><m:part id='P1'><m:measure>"
                + "<m:note><m:rest/></m:note></m:measure></m:part></m:score-partwise>";

        assertThat(annotate(text, box(1)))
                .contains("<m:lyric number=\"1\" name=\"fretgloss:box\"><m:syllabic>single</m:syllabic><m:text>")
                .contains("</m:miscellaneous></m:identification><m:part ");
    }

    @Test
    @DisplayName("without texts nothing changes")
    void nothingToSay() throws ScoreException {
        String text = ScoreTexts.partwise("<note/>");

        assertThat(annotate(text)).isEqualTo(text);
    }

    @Test
    @DisplayName("an annotated score must be stripped first, an empty note bears no lyric")
    void misuse() throws ScoreException {
        String annotated = annotate(ScoreTexts.partwise("<note><rest/></note>"), box(1));

        assertThatIllegalArgumentException().isThrownBy(() -> annotate(annotated, box(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> annotate(ScoreTexts.partwise("<note/>"), box(1)));
    }
}
