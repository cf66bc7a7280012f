package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.annotator.Version;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the commands say about themselves, and about words that they do not take. */
class UsageTest {

    private static Session asked(String command, String option) {
        Session session = Session.run((command + " " + option).trim().split(" ", -1));
        assertThat(session.exit()).as(session.err()).isZero();
        assertThat(session.err()).isEmpty();
        return session;
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "annotate", "strip", "rules"})
    @DisplayName("every command tells the version")
    void version(String command) {
        assertThat(asked(command, "--version").text()).isEqualToIgnoringNewLines("fretgloss " + Version.NUMBER);
    }

    @ParameterizedTest
    @CsvSource({
        "annotate, Missing required parameter",
        "strip, Missing required parameter",
        "annotate a.xml b.xml, b.xml",
        "annotate a.xml -o, -o",
        "strip a.xml --lines box, --lines",
        "rules box bend, bend"
    })
    @DisplayName("wrong usage is one line that says where help is")
    void usage(String words, String told) {
        Session session = Session.run(words.split(" ", -1));

        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.out().size()).isZero();
        assertThat(session.err().lines())
                .singleElement()
                .asString()
                .contains(told)
                .endsWith("(see 'fretgloss " + words.split(" ", 2)[0] + " --help')");
    }

    @ParameterizedTest
    @ValueSource(strings = {"box", "reach", "bend", "third", "outline", "outside", "colour", "space", "climax"})
    @DisplayName("every rule has a page to show")
    void pages(String rule) {
        assertThat(asked("rules", rule).text())
                .startsWith("# ")
                .contains("## Why it matters", "## When this is wrong", "## Examples", "## Sources");
    }
}
