package org.fretgloss.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Three invented melodies: one of four phrases, one of one, and one that is parted by a rest and marked somewhere else on
 * purpose: of its two beginnings, marked and found, only the first note is shared.
 */
class PhrasesTest {

    @Test
    void averagesTheScoresOfMelodies() throws IOException, URISyntaxException {
        List<Figure> figures = Evaluation.figures(
                "phrases",
                Path.of(Objects.requireNonNull(getClass().getResource("phrases.json"))
                        .toURI()));
        assertThat(figures).extracting(Figure::cases).containsExactly(3, 3);
        assertThat(figures.get(0).value()).isCloseTo((1 + 1 + 0.5) / 3, within(1e-9));
        assertThat(figures.get(1).value()).isCloseTo((1 + 1 + 0.0) / 3, within(1e-9));
    }
}
