package org.fretgloss.annotator.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.fretgloss.annotator.file.Archives;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.ScoreTexts;
import org.fretgloss.rule.Line;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SelfCheckTest {

    private static final String PLAIN = ScoreTexts.partwise("\n<note>\n <duration>1</duration>\n</note>\n");

    private static String annotate(String text) throws ScoreException {
        return ScoreWriter.annotate(
                ScoreScan.of(text), List.of(new LineText(Line.BOX, 1, "box 1 fr5")), new Stamp("1", Map.of()), UTF_8);
    }

    @Test
    @DisplayName("our own output passes")
    void passes() throws ScoreException {
        String annotated = annotate(PLAIN);

        assertThatCode(() -> SelfCheck.verify(PLAIN, annotated)).doesNotThrowAnyException();
    }

    @Test
    @DisplayName("a single character that differs is refused, with its place")
    void damage() throws ScoreException {
        String annotated = annotate(PLAIN).replace("<duration>1<", "<duration>2<");

        assertThatThrownBy(() -> SelfCheck.verify(PLAIN, annotated))
                .isInstanceOf(SelfCheckException.class)
                .hasMessageContaining("line 3, column 12");
    }

    @Test
    @DisplayName("an output that is longer, or no score at all, is refused")
    void others() throws ScoreException {
        String annotated = annotate(PLAIN);

        assertThatThrownBy(() -> SelfCheck.verify(PLAIN, annotated + "\n")).isInstanceOf(SelfCheckException.class);
        assertThatThrownBy(() -> SelfCheck.verify(PLAIN, annotated.substring(1)))
                .isInstanceOf(SelfCheckException.class);
    }

    @Test
    @DisplayName("the bytes are checked as well: encoding, byte order mark, the other entries of an archive")
    void bytes() throws Exception {
        ScoreFile plain = ScoreFile.of("s", Archives.utf8(PLAIN));
        ScoreFile packed = ScoreFile.of("s", Archives.mxl(PLAIN, false));
        byte[] good = packed.withText(annotate(PLAIN));
        byte[] otherArchive = ScoreFile.of("s", Archives.mxl(PLAIN, true)).withText(annotate(PLAIN));

        assertThatCode(() -> SelfCheck.verify(packed, PLAIN, good)).doesNotThrowAnyException();
        assertThatThrownBy(() -> SelfCheck.verify(packed, PLAIN, otherArchive))
                .isInstanceOf(SelfCheckException.class)
                .hasMessageContaining("outside the score's text");
        assertThatThrownBy(() -> SelfCheck.verify(plain, PLAIN, Archives.utf8("\uFEFF" + annotate(PLAIN))))
                .isInstanceOf(SelfCheckException.class);
        assertThatThrownBy(() -> SelfCheck.verify(plain, PLAIN, new byte[0])).isInstanceOf(SelfCheckException.class);
    }
}
