package org.fretgloss.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Two invented tabs of notes that the neck has once: four on the lowest string, one of them given a wrong place on purpose,
 * and one at fret 22. The first is a lead, whose places are never called very sure.
 */
class TabsTest {

    @Test
    void countsTheNotesWhosePlaceIsFound() throws IOException, URISyntaxException {
        List<Figure> figures = Evaluation.figures(
                "tabs",
                Path.of(Objects.requireNonNull(getClass().getResource("tabs.json"))
                        .toURI()));
        assertThat(figures)
                .containsExactly(
                        new Figure("tabs: string and fret", 0.8, 5),
                        new Figure("tabs: notes at fret 5 and up", 0.5, 2),
                        new Figure("tabs: notes whose place is called at least 80 % sure", 1, 1),
                        new Figure("tabs: the other notes", 0.75, 4));
    }
}
