package org.fretgloss.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageCheckTest {

    private static final String WHOLE = """
            # Shy

            Finds nothing.

            ## Why it matters
            It does not.

            ## When this is wrong
            Never.

            ## Options
            | option | default | range | meaning |
            |---|---|---|---|
            | `depth` | 2 | 1 to 4 | how deep, in frets |

            ## Examples
            ```fires
            3/7:4
            => bar 1 beat 1: x
            ```
            ```silent
            3/7:4
            ```

            ## Sources
            None.
            """;

    /** A rule without a page beside it. */
    private static final class Shy implements Rule {

        private final List<Option<?>> options;

        Shy(Option<?>... options) {
            this.options = List.of(options);
        }

        @Override
        public Line line() {
            return Line.NOTES;
        }

        @Override
        public List<Option<?>> options() {
            return options;
        }

        @Override
        public Stream<Finding> examine(Analysis analysis, Settings settings) {
            return Stream.empty();
        }
    }

    private static final Rule SHY = new Shy(Option.ofInt("depth", 2, 1, 4, "how deep, in frets"));

    private static List<String> complaints(String page) {
        return PageCheck.complaints(SHY, RulePage.parse(page));
    }

    @Test
    void aWholePageHasNoComplaints() {
        assertThat(complaints(WHOLE)).isEmpty();
    }

    @Test
    void aRuleNeedsAPage() {
        assertThat(PageCheck.complaints(SHY))
                .singleElement()
                .asString()
                .contains("there is no page: write shy.md beside org.fretgloss.page.PageCheckTest$Shy");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "# Shy; Shy; no title",
                "Finds nothing.; ''; one sentence",
                "Finds nothing.; Finds nothing, it is shy; one sentence",
                "## When this is wrong\\nNever.; ''; the sections should be",
                "matters; mattered; the sections should be",
                "It does not.; ''; the section 'Why it matters' is empty",
                "## Sources\\nNone.; ## Sources; the section 'Sources' is empty",
                "| 2 |; | 3 |; the options section should hold",
                "1 to 4; 1 to 5; the options section should hold",
                "how deep, in frets; how deep; the options section should hold",
                "`depth`; `width`; the options section should hold",
                "| `depth` | 2 | 1 to 4 | how deep, in frets |; None.; the options section should hold",
                "```fires; ```text; no example that must be found",
                "```silent; ```text; no example that must stay silent",
            })
    void tellsWhatIsMissingOrWrong(String text, String instead, String complaint) {
        String broken = WHOLE.replace(text.replace("\\n", "\n"), instead);
        assertThat(broken).isNotEqualTo(WHOLE);
        assertThat(complaints(broken)).anySatisfy(line -> assertThat(line).contains(complaint));
    }

    @Test
    void aRuleWithoutOptionsSaysSo() {
        String without = WHOLE.replaceAll("(?s)\\| option.*frets \\|", "None.");
        assertThat(PageCheck.complaints(new Shy(), RulePage.parse(without))).isEmpty();
        assertThat(PageCheck.complaints(new Shy(), RulePage.parse(WHOLE)))
                .singleElement()
                .asString()
                .contains("the rule declares no option");
    }
}
