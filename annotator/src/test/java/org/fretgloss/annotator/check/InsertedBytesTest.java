package org.fretgloss.annotator.check;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.fretgloss.annotator.file.Archives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The check itself can tell a good output from a bad one, in each encoding and in archives. */
class InsertedBytesTest {

    private static final String ORIGINAL = "<note><a>é</a></note>";
    private static final String LYRIC =
            "<lyric number=\"1\" name=\"fretgloss:bend\"><syllabic>single</syllabic>" + "<text>½ ♭3→3</text></lyric>";
    private static final String ANNOTATED = "<note><a>é</a>" + LYRIC + "</note>";

    /** The letter changed comes again in the inserted text. */
    private static final String CHANGED = "<nXte><a>é</a>" + LYRIC + "</note>";

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE"})
    void goesByTheBytes(String encoding) {
        Charset charset = Charset.forName(encoding);

        assertThatCode(() -> check(ORIGINAL.getBytes(charset), ANNOTATED.getBytes(charset)))
                .doesNotThrowAnyException();
        assertThatThrownBy(() -> check(ORIGINAL.getBytes(charset), CHANGED.getBytes(charset)))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void takesNoOtherSpellingForTheSame() {
        byte[] latin = ANNOTATED.replaceAll("[½♭→]", "?").getBytes(StandardCharsets.ISO_8859_1);

        assertThatThrownBy(() -> check(ORIGINAL.getBytes(StandardCharsets.UTF_8), latin))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void looksIntoArchives() throws IOException {
        byte[] original = archive(ORIGINAL, "p");

        assertThatCode(() -> check(original, archive(ANNOTATED, "p"))).doesNotThrowAnyException();
        assertThatThrownBy(() -> check(original, archive(CHANGED, "p"))).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> check(original, archive(ANNOTATED, "q"))).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> check(original, Archives.zip(Map.of("score.xml", Archives.utf8(ANNOTATED)), false)))
                .isInstanceOf(AssertionError.class);
    }

    private static void check(byte[] original, byte[] annotated) {
        InsertedBytes.check("score", original, annotated);
    }

    private static byte[] archive(String score, String picture) throws IOException {
        return Archives.zip(Map.of("score.xml", Archives.utf8(score), "picture", Archives.utf8(picture)), false);
    }
}
