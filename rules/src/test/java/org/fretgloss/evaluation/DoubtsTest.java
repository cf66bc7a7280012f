package org.fretgloss.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** An invented line of sixteen notes, and the same line with fret 9 in place of fret 8. */
class DoubtsTest {

    @Test
    void countsTheNotesAndPiecesThatAreNotDoubted() throws IOException, URISyntaxException {
        List<Figure> figures = Evaluation.figures(
                "doubts",
                Path.of(Objects.requireNonNull(getClass().getResource("doubts.json"))
                        .toURI()));
        assertThat(figures)
                .containsExactly(
                        new Figure("doubts: notes that wrong-box leaves alone", 1 - 1 / 32.0, 32),
                        new Figure("doubts: pieces that it leaves alone", 0.5, 2));
    }
}
