package org.fretgloss.annotator.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.ScoreTexts;
import org.fretgloss.rule.Line;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StripperTest {

    private static final String PLAIN = ScoreTexts.partwise("\n  <note>\n    <rest/>\n  </note>\n");

    private static String annotate(String text) throws ScoreException {
        return ScoreWriter.annotate(
                ScoreScan.of(text),
                List.of(new LineText(Line.MOVES, 1, "full 4→5")),
                new Stamp("1.2.3", Map.of()),
                UTF_8);
    }

    @Test
    @DisplayName("a score without anything of ours stays as it is")
    void nothingOfOurs() throws ScoreException {
        String verses = ScoreTexts.partwise("<note><rest/>\n<lyric name='fretgloss'/><lyric name='verse'/></note>");

        assertThat(Stripper.strip(verses)).isEqualTo(new Stripped(verses, 0, Stripped.Edits.NONE));
    }

    @ParameterizedTest
    @DisplayName("whatever head the score had, it comes back")
    @ValueSource(
            strings = {
                "",
                "<identification/>",
                "<identification />",
                "<identification></identification>",
                "<identification>\n</identification>",
                "<identification><!-- who --></identification>",
                "<identification><miscellaneous/></identification>",
                "\n  <identification>\n    <miscellaneous />\n  </identification>",
                "<identification><miscellaneous><!-- what --></miscellaneous></identification>",
                "\r\n<identification><rights/>\r\n<miscellaneous>\r\n</miscellaneous>\r\n</identification>\r\n",
                "<identification><miscellaneous><miscellaneous-field name='a'>b</miscellaneous-field></miscellaneous>"
                        + "</identification>"
            })
    void heads(String head) throws ScoreException {
        String text = PLAIN.replace("<part-list>", head + "<part-list>");

        assertThat(Stripper.strip(annotate(text)).text()).isEqualTo(text);
    }

    @Test
    @DisplayName("a text edited, added or taken out by hand is noticed")
    void editedByHand() throws ScoreException {
        String annotated = annotate(PLAIN);
        String retold = annotated.replace("full 4→5", "full 4→5!");
        String moreLines = annotated.replace("</lyric>", "</lyric><lyric name='fretgloss:box'><text>x</text></lyric>");
        String fewer = annotated.replaceAll("(?s)\\s*<lyric.*</lyric>", "");

        assertThat(Stripper.strip(annotated).edits()).isEqualTo(Stripped.Edits.NONE);
        for (String edited : List.of(retold, moreLines, fewer)) {
            Stripped stripped = Stripper.strip(edited);
            assertThat(stripped.edits()).isEqualTo(Stripped.Edits.SOME);
            assertThat(stripped.text()).isEqualTo(PLAIN);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "hello", "{}", "[1]", "null", "{\"version\":1,\"lines\":[]}"})
    @DisplayName("a damaged field goes too; what was around it stays, and nothing tells of edits")
    void damagedField(String content) throws ScoreException {
        String annotated = annotate(PLAIN).replaceAll("\\{\"version.*?}(?=<)", content.replace("\\", "\\\\"));

        Stripped stripped = Stripper.strip(annotated);

        assertThat(stripped.edits()).isEqualTo(Stripped.Edits.UNKNOWN);
        assertThat(stripped.text())
                .isEqualTo(PLAIN.replace(
                        "<part-list>", "<identification><miscellaneous></miscellaneous></identification><part-list>"));
    }

    @Test
    @DisplayName("where another program dropped the field, our lyrics still go")
    void droppedField() throws ScoreException {
        String annotated = annotate(PLAIN).replaceAll("<identification>.*</identification>", "");

        Stripped stripped = Stripper.strip(annotated);

        assertThat(stripped).isEqualTo(new Stripped(PLAIN, 1, Stripped.Edits.UNKNOWN));
    }

    @Test
    @DisplayName("what another program put beside our field stays, with the elements around it")
    void filledByOthers() throws ScoreException {
        String encoding = "<encoding><software>X</software></encoding>";
        String field = "<miscellaneous-field name='b'>c</miscellaneous-field>";

        assertThat(Stripper.strip(annotate(PLAIN).replace("<miscellaneous>", encoding + "<miscellaneous>"))
                        .text())
                .contains("<identification>" + encoding + "</identification>")
                .doesNotContain("miscellaneous");
        assertThat(Stripper.strip(annotate(PLAIN).replace("</miscellaneous>", field + "</miscellaneous>"))
                        .text())
                .contains("<identification><miscellaneous>" + field + "</miscellaneous></identification>");
    }

    @Test
    @DisplayName("two fields of ours both go")
    void twoFields() throws ScoreException {
        String annotated =
                annotate(PLAIN).replace("<miscellaneous>", "<miscellaneous><miscellaneous-field name='fretgloss'/>");

        assertThat(Stripper.strip(annotated).text()).doesNotContain("fretgloss");
    }
}
