package org.fretgloss.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RulePageTest {

    private static final RulePage PAGE = RulePage.parse("""
            # Space

            Silence that is heard.

            ## Why it matters

            It breathes.

            ## Examples

            Three beats.

            ```fires
            ## no heading | 3/7:1 r:3 |
            => bar 1 beat 1: space 3
            ```

            ```silent
            3/7:4
            ```

            ```text
            another kind of block
            ```
            """);

    @Test
    void hasATitleAndASentence() {
        assertThat(PAGE.title()).isEqualTo("Space");
        assertThat(PAGE.summary()).isEqualTo("Silence that is heard.");
    }

    @Test
    void hasSectionsInOrder() {
        assertThat(PAGE.sections().keySet()).containsExactly("Why it matters", "Examples");
        assertThat(PAGE.section("Why it matters")).isEqualTo("It breathes.");
        assertThat(PAGE.section("Sources")).isEmpty();
    }

    @Test
    void findsExamplesInFencedBlocks() {
        assertThat(PAGE.examples())
                .containsExactly(
                        new PageExample(13, true, "## no heading | 3/7:1 r:3 |\n=> bar 1 beat 1: space 3"),
                        new PageExample(18, false, "3/7:4"));
        assertThat(PAGE.examples().get(0)).hasToString("line 13, fires");
    }

    @Test
    void aBlockThatIsNeverClosedEndsWithThePage() {
        assertThat(RulePage.parse("# A\n```fires\n3/7:4").examples())
                .containsExactly(new PageExample(2, true, "3/7:4"));
    }
}
