package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How bytes become text and text becomes the same bytes. The order of signs is that of XML 1.0, appendix F. */
class EncodingTest {

    private static final String TITLE = "<movement-title>\u00C9tude</movement-title>";

    private static String declared(String encoding) {
        return "<?xml version='1.0' encoding='" + encoding + "'?><score-partwise>" + TITLE + "</score-partwise>";
    }

    private static ScoreFile read(byte[] bytes) throws ScoreException {
        return ScoreFile.of("score", bytes);
    }

    @ParameterizedTest
    @DisplayName("a declared encoding is used, and the text goes back to the same bytes")
    @CsvSource({
        "UTF-8,UTF-8",
        "utf-8,UTF-8",
        "ISO-8859-1,ISO-8859-1",
        "latin1,ISO-8859-1",
        "windows-1252,windows-1252",
        "ISO-8859-15,ISO-8859-15",
        "UTF-16,UTF-16LE",
        "UTF-16,UTF-16BE",
        "UTF-16LE,UTF-16LE",
        "UTF-32,UTF-32BE",
        "UTF-32,UTF-32LE"
    })
    void declaredEncodings(String name, Charset charset) throws ScoreException {
        byte[] bytes = declared(name).getBytes(charset);

        ScoreFile file = read(bytes);

        assertThat(file.text()).isEqualTo(declared(name));
        assertThat(file.withText(file.text())).isEqualTo(bytes);
        assertThat(file.notices()).isEmpty();
    }

    @ParameterizedTest
    @DisplayName("a byte order mark tells the encoding, is no part of the text, and comes back")
    @CsvSource({"UTF-8", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"})
    void byteOrderMarks(Charset charset) throws ScoreException {
        String text = "<score-partwise>" + TITLE + "</score-partwise>";
        byte[] bytes = ("\uFEFF" + text).getBytes(charset);

        ScoreFile file = read(bytes);

        assertThat(file.text()).isEqualTo(text);
        assertThat(file.withText(file.text())).isEqualTo(bytes);
        assertThat(file.notices()).isEmpty();
    }

    @Test
    @DisplayName("without any sign it is UTF-8; a pattern of null bytes is UTF-16")
    void noSign() throws ScoreException {
        String text = "<score-partwise>" + TITLE + "</score-partwise>";

        assertThat(read(text.getBytes(StandardCharsets.UTF_8)).text()).isEqualTo(text);
        assertThat(read(text.getBytes(StandardCharsets.UTF_16LE)).text()).isEqualTo(text);
        assertThat(read(text.getBytes(StandardCharsets.UTF_16BE)).text()).isEqualTo(text);
    }

    @ParameterizedTest
    @DisplayName("where the declaration contradicts the bytes, the bytes decide and a notice says so")
    @CsvSource({
        "UTF-16,UTF-8",
        "UTF-16LE,UTF-8",
        "US-ASCII,UTF-8",
        "ISO-8859-1,UTF-8",
        "windows-1252,UTF-8",
        "x-nothing,UTF-8",
        "UTF-8,UTF-16LE",
        "ISO-8859-1,UTF-16BE"
    })
    void wronglyDeclared(String declared, Charset real) throws ScoreException {
        byte[] bytes = declared(declared).getBytes(real);

        ScoreFile file = read(bytes);

        assertThat(file.text()).isEqualTo(declared(declared));
        assertThat(file.withText(file.text())).isEqualTo(bytes);
        assertThat(file.notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice)
                        .contains("says its encoding is " + declared)
                        .contains("read as " + real));
    }

    @Test
    @DisplayName("a byte order mark wins over the declaration")
    void markWins() throws ScoreException {
        ScoreFile file = read(("\uFEFF" + declared("ISO-8859-1")).getBytes(StandardCharsets.UTF_8));

        assertThat(file.text()).contains(TITLE);
        assertThat(file.notices()).hasSize(1);
    }

    @Test
    @DisplayName("a letter broken among whole ones is damage and refused, with line and byte")
    void malformed() {
        byte[] bytes = ("<score-partwise>\r\n\r\n" + TITLE + TITLE).getBytes(StandardCharsets.UTF_8);
        int inSecondLetter = bytes.length - "tude</movement-title>".length() - 1;
        bytes[inSecondLetter] = 'x';

        assertThatThrownBy(() -> read(bytes))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("line 3")
                .hasMessageContaining("UTF-8")
                .hasMessageContaining("byte " + (inSecondLetter - 1));
    }

    @ParameterizedTest
    @DisplayName("where no letter beyond ASCII is UTF-8, it is an encoding of one byte a letter")
    @CsvSource({
        "UTF-8,caf\u00E9,ISO-8859-1",
        "US-ASCII,caf\u00E9,ISO-8859-1",
        "UTF-8,it\u2019s,windows-1252",
        "UTF-8,\u00C9tude \u2013 caf\u00E9,windows-1252"
    })
    void oneByteAfterAll(String declared, String title, Charset real) throws ScoreException {
        String text = declared(declared).replace("\u00C9tude", title);

        ScoreFile file = read(text.getBytes(real));

        assertThat(file.text()).isEqualTo(text);
        assertThat(file.withText(file.text())).isEqualTo(text.getBytes(real));
        assertThat(file.notices()).singleElement().asString().contains("read as " + real);
    }

    @Test
    @DisplayName("an encoding of several bytes a letter is believed where its bytes could be UTF-8 too")
    void believedWhereItFits() throws ScoreException {
        // Half-width katakana TE and A are 0xC3 0xB1 in Shift_JIS, which UTF-8 would read as one Latin letter.
        String text = declared("Shift_JIS").replace("\u00C9tude", "\uFF83\uFF71");

        assertThat(read(text.getBytes(Charset.forName("Shift_JIS"))).text()).isEqualTo(text);
    }

    @Test
    @DisplayName("an encoding that does not give the bytes back is refused")
    void notReversible() {
        byte[] redundantEscapes =
                "<?xml version='1.0' encoding='ISO-2022-JP'?><score-partwise>\u001B(B\u001B(B</score-partwise>"
                        .getBytes(StandardCharsets.US_ASCII);

        assertThatThrownBy(() -> read(redundantEscapes))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("ISO-2022-JP")
                .hasMessageContaining("save the score as UTF-8");
    }

    @Test
    @DisplayName("a text that the encoding cannot hold is never written")
    void beyondTheEncoding() throws ScoreException {
        ScoreFile file = read(declared("ISO-8859-1").getBytes(StandardCharsets.ISO_8859_1));

        assertThatThrownBy(() -> file.withText("\u266D")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("what is inserted may use the file's encoding, but only ASCII where the file misnames it")
    void insertable() throws ScoreException {
        byte[] utf8 = declared("ISO-8859-1").getBytes(StandardCharsets.UTF_8);
        byte[] latin = declared("ISO-8859-1").getBytes(StandardCharsets.ISO_8859_1);

        assertThat(read(latin).insertable()).isEqualTo(StandardCharsets.ISO_8859_1);
        assertThat(read(utf8).insertable()).isEqualTo(StandardCharsets.US_ASCII);
    }

    @Test
    @DisplayName("notices and text of a compressed score are those of the score in it")
    void insideAnArchive() throws Exception {
        byte[] score = declared("UTF-16").getBytes(StandardCharsets.UTF_8);
        byte[] mxl = Archives.zip(
                Map.of(Archives.CONTAINER, Archives.utf8(Archives.container("s.xml")), "s.xml", score), false);

        assertThat(read(mxl).text()).isEqualTo(declared("UTF-16"));
        assertThat(read(mxl).notices())
                .hasSize(1)
                .isEqualTo(List.copyOf(read(score).notices()));
    }
}
