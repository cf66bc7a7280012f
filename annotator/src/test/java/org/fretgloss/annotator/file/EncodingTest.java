package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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
    @DisplayName("bytes that are no text in the encoding are refused, with line and byte")
    void malformed() {
        byte[] bytes = ("<score-partwise>\r\n\r\n" + TITLE).getBytes(StandardCharsets.ISO_8859_1);
        byte[] declared = declared("UTF-8").getBytes(StandardCharsets.ISO_8859_1);

        assertThatThrownBy(() -> read(bytes))
                .isInstanceOf(ScoreException.class)
                .hasMessageContaining("line 3")
                .hasMessageContaining("UTF-8")
                .hasMessageContaining("byte 36");
        assertThatThrownBy(() -> read(declared)).hasMessageContaining("UTF-8");
    }

    @Test
    @DisplayName("half a character at the end is refused too")
    void cutInACharacter() {
        byte[] bytes = "<score-partwise>\u266D".getBytes(StandardCharsets.UTF_8);

        assertThatThrownBy(() -> read(Arrays.copyOf(bytes, bytes.length - 1))).isInstanceOf(ScoreException.class);
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

    @ParameterizedTest
    @DisplayName("what the encoding cannot hold becomes a character reference, and only that")
    @CsvSource({
        "US-ASCII,\u00BD \u266D3 \uD834\uDD1E,&#xBD; &#x266D;3 &#x1D11E;",
        "ISO-8859-1,\u00BD \u266D3 \uD834\uDD1E,\u00BD &#x266D;3 &#x1D11E;",
        "windows-1252,\u2026 \u266D,\u2026 &#x266D;",
        "UTF-8,\u00BD \u266D3 \uD834\uDD1E,\u00BD \u266D3 \uD834\uDD1E"
    })
    void characterReferences(Charset charset, String text, String written) throws ScoreException {
        ScoreFile file = read(("<?xml version='1.0' encoding='" + charset + "'?><score-partwise/>").getBytes(charset));

        assertThat(new String(file.withText(text), charset)).isEqualTo(written);
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
