package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SplicerTest {

    @Test
    @DisplayName("splices are made by the offsets of the text as given, in whatever order they come")
    void splices() {
        String spliced = Splicer.apply(
                "abcdef",
                List.of(Splice.insert(6, "!"), Splice.remove(2, 4), Splice.insert(0, "<"), new Splice(4, 5, "E")));

        assertThat(spliced).isEqualTo("<abEf!");
    }

    @Test
    @DisplayName("insertions at one offset keep their order")
    void sameOffset() {
        assertThat(Splicer.apply("ab", List.of(Splice.insert(1, "1"), Splice.insert(1, "2"))))
                .isEqualTo("a12b");
    }

    @Test
    @DisplayName("overlapping splices and offsets outside the text are refused")
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Splicer.apply("abcdef", List.of(Splice.remove(1, 4), Splice.remove(3, 5))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Splicer.apply("abcdef", List.of(Splice.remove(1, 4), Splice.insert(2, "x"))));
        assertThatIllegalArgumentException().isThrownBy(() -> Splicer.apply("ab", List.of(Splice.insert(3, "x"))));
        assertThatIllegalArgumentException().isThrownBy(() -> Splice.remove(2, 1));
    }

    @Test
    @DisplayName("a place counts lines that end with LF, CR LF and CR")
    void places() {
        String text = "a\nb\r\nc\rd";

        assertThat(TextPlace.at(text, 0)).isEqualTo(new TextPlace(1, 1));
        assertThat(TextPlace.at(text, text.indexOf('b'))).isEqualTo(new TextPlace(2, 1));
        assertThat(TextPlace.at(text, text.indexOf('c'))).isEqualTo(new TextPlace(3, 1));
        assertThat(TextPlace.at(text, text.length())).isEqualTo(new TextPlace(4, 2));
    }
}
