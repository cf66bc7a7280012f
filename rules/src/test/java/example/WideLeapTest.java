package example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fretgloss.page.PageCheck;
import org.fretgloss.page.PageExamples;
import org.fretgloss.page.RulePage;
import org.junit.jupiter.api.Test;

/** The rule and the page that the contributor's guide shows: they hold, and the guide shows them as they are. */
class WideLeapTest {

    private static final Path GUIDE = Path.of("../DEVELOPERS.md");

    @Test
    void itsPageIsWholeAndItsExamplesHold() {
        WideLeap rule = new WideLeap();
        assertThat(PageCheck.complaints(rule)).isEmpty();
        assertThat(RulePage.of(rule).orElseThrow().examples())
                .hasSize(2)
                .allSatisfy(
                        example -> assertThat(PageExamples.run(rule, example)).isEmpty());
    }

    @Test
    void theGuideShowsThemAsTheyAre() throws IOException {
        assertThat(Files.readString(GUIDE))
                .contains(Files.readString(Path.of("src/test/java/example/WideLeap.java")))
                .contains(Files.readString(Path.of("src/test/resources/example/wide-leap.md")));
    }
}
