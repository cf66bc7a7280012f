package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no score, no whole score, or were made to do harm: one clear line each. */
class BadScoreTest {

    private static AbstractThrowableAssert<?, ? extends Throwable> refusalOf(String text) {
        return assertThatThrownBy(() -> ScoreScan.of(ScoreFile.of("score", text.getBytes(StandardCharsets.UTF_8))
                        .text()))
                .isInstanceOf(ScoreException.class)
                .satisfies(
                        refusal -> assertThat(refusal.getMessage()).isNotBlank().doesNotContain("\n", "Exception"));
    }

    @Test
    @DisplayName("no file, a folder, an empty file")
    void noFile(@TempDir Path folder) throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.musicxml"));
        Path blank = Files.writeString(folder.resolve("blank.musicxml"), "  \n");

        assertThatThrownBy(() -> ScoreFile.read(folder.resolve("none.musicxml")))
                .isInstanceOf(ScoreException.class)
                .hasMessage("there is no such file");
        assertThatThrownBy(() -> ScoreFile.read(folder))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("folder");
        for (Path nothing : List.of(empty, blank)) {
            assertThatThrownBy(() -> ScoreFile.read(nothing))
                    .isInstanceOf(ScoreException.class)
                    .hasMessageContaining("empty");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"hello", "%PDF-1.7", "{\"score\": 1}", "MThd\u0000\u0000", "\u0000"})
    @DisplayName("not XML at all")
    void notXml(String text) {
        refusalOf(text).hasMessageContaining("no MusicXML file").hasMessageContaining("export");
    }

    @Test
    @DisplayName("XML of another kind names what it found")
    void notMusicXml() {
        refusalOf("<html><body/></html>").hasMessageContaining("<html>").hasMessageContaining("<score-partwise>");
        refusalOf("<opus/>").hasMessageContaining("<opus>");
    }

    @Test
    @DisplayName("a score cut off at any character is refused; in a bar it names the bar")
    void cutOff() throws ScoreException {
        String whole = ScoreTexts.partwise("<note><rest/>\n<duration>1</duration></note>\n");
        ScoreScan.of(whole);

        for (int end = 1; end < whole.length(); end++) {
            refusalOf(whole.substring(0, end));
        }
        refusalOf(whole.substring(0, whole.indexOf("</note>")))
                .hasMessage("the score breaks off at line 2, bar 1 of part P1; export or copy it again");
    }

    @Test
    @DisplayName("a damaged score names line and bar")
    void damaged() {
        refusalOf(ScoreTexts.partwise("\n\n<note><rest></note>"))
                .hasMessageContaining("line 3")
                .hasMessageContaining("bar 1 of part P1");
        refusalOf(ScoreTexts.partwise("<note/>") + "<more/>").hasMessageContaining("damaged");
        refusalOf(ScoreTexts.partwise("<note>\u0000</note>")).hasMessageContaining("damaged");
    }

    @Test
    @DisplayName("entities of the file's own are never expanded, in content or in attributes")
    void entityBomb() {
        String laughs = IntStream.range(1, 10)
                .mapToObj(i -> "<!ENTITY l" + i + " '" + ("&l" + (i - 1) + ";").repeat(10) + "'>")
                .reduce("<!ENTITY l0 'ha'>", String::concat);
        String bomb = "<!DOCTYPE score-partwise [" + laughs + "]>";

        refusalOf(bomb + ScoreTexts.partwise("<note>&l9;</note>"))
                .hasMessageContaining("entities of its own")
                .hasMessageContaining("bar 1");
        refusalOf(bomb + ScoreTexts.partwise("<note dynamics='&l9;'/>")).hasMessageContaining("entities of its own");
    }

    @Test
    @DisplayName("a declared entity that is not used, comments and a public id are kept")
    void harmlessDoctype() throws ScoreException {
        String doctype = "<!DOCTYPE score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\""
                + " \"http://www.musicxml.org/dtds/partwise.dtd\" [<!-- <note> ]> --><!ENTITY a 'b'>]>";

        assertThat(ScoreScan.of(doctype + ScoreTexts.partwise("<note/>")).notes())
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<!ENTITY x SYSTEM 'file:///etc/hostname'>",
                "<!ENTITY x PUBLIC 'a' 'http://127.0.0.1:9/x'>",
                "<!ENTITY % x SYSTEM 'http://127.0.0.1:9/x'> %x;"
            })
    @DisplayName("an entity in another file is refused, used or not")
    void externalEntity(String declaration) {
        String doctype = "<!DOCTYPE score-partwise [" + declaration + "]>";

        refusalOf(doctype + ScoreTexts.partwise("<note>&x;</note>")).hasMessageContaining("another file");
        refusalOf(doctype + ScoreTexts.partwise("<note/>")).hasMessageContaining("another file");
    }

    @Test
    @DisplayName("nesting 200,000 deep")
    void deep() {
        String deep = "<a>".repeat(200_000) + "</a>".repeat(200_000);

        refusalOf(ScoreTexts.partwise(deep)).hasMessageContaining("nested more than 200");
    }

    @Test
    @DisplayName("more attributes, or a longer one, than any score has")
    void hugeAttributes() {
        String many = IntStream.range(0, 10_000).mapToObj(i -> " a" + i + "=''").reduce("", String::concat);

        refusalOf(ScoreTexts.partwise("<note" + many + "/>")).hasMessageContaining("more than any score");
        refusalOf(ScoreTexts.partwise("<note a='" + "x".repeat(3_000_000) + "'/>"))
                .hasMessageContaining("more than any score");
    }
}
