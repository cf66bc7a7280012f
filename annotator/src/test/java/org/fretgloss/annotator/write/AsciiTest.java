package org.fretgloss.annotator.write;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsciiTest {

    @ParameterizedTest
    @DisplayName("every glyph of ours has its stand-in; a mixed fraction gets a space")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "½ ♭3→3|1/2 b3->3",
                "1½ 5→♭7|1 1/2 5->b7",
                "2½|2 1/2",
                "¼ ♭3|1/4 b3",
                "¾|3/4",
                "bar 5 beat 3⅓|bar 5 beat 3 1/3",
                "1⅔|1 2/3",
                "A7: 3 1 ♭7 5…|A7: 3 1 b7 5...",
                "full 4→5 · 6|full 4->5 ; 6",
                "A′|A'",
                "F♯m7♭5|F#m7b5",
                "box 4 fr12|box 4 fr12",
                "Küche|Küche"
            })
    void glyphs(String text, String ascii) {
        assertThat(Ascii.of(text)).isEqualTo(ascii);
    }
}
