package org.fretgloss.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Four invented melodies, the last of which is given a wrong key on purpose. */
class KeysTest {

    @Test
    void countsTheMelodiesWhoseTonicAndModeAreFound() throws IOException, URISyntaxException {
        List<Figure> figures = Evaluation.figures(
                "keys",
                Path.of(Objects.requireNonNull(getClass().getResource("keys.json"))
                        .toURI()));
        assertThat(figures)
                .containsExactly(new Figure("keys: tonic and mode", 0.75, 4), new Figure("keys: tonic", 0.75, 4));
    }
}
