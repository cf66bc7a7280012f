package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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
        "annotate, the SCORE is missing",
        "strip, the SCORE is missing",
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

    private static final String SCORE = "../fixtures/plain-clothes/score.musicxml";

    /** What stands after the command and the score, and what is said of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            quoteCharacter = '`',
            value = {
                "annotate | -o # -o needs a value: OUT",
                "annotate | -o | a.xml | -o | b.xml # -o is given twice: give it once",
                "annotate | --space | 3 | --space | 4 # --space is given twice: give it once",
                "annotate | --quiet | --quiet # --quiet is given twice: give it once",
                "annotate | --quiet=maybe # --quiet takes no value",
                "annotate | --space # --space needs a value: BEATS",
                "annotate | --space | 0 # --space takes 1/2 to 64 beats, such as 3 or 7/2, and not '0'",
                "annotate | --space | 65 # --space takes 1/2 to 64 beats, such as 3 or 7/2, and not '65'",
                "annotate | --space | -1 # --space takes 1/2 to 64 beats, such as 3 or 7/2, and not '-1'",
                "annotate | --space | 1/0 # --space takes 1/2 to 64 beats, such as 3 or 7/2, and not '1/0'",
                "annotate | --space | three # --space takes 1/2 to 64 beats, such as 3 or 7/2, and not 'three'",
                "annotate | --lines | foo # --lines: 'foo' is not the name of a line; there are: box, moves, outline, notes,"
                        + " shape, phrases, degrees, chords, doubts",
                "annotate | --lines | box,,notes # --lines: '' is not the name of a line; there are: box, moves, outline,"
                        + " notes, shape, phrases, degrees, chords, doubts",
                "annotate | --add-lines | degree # --add-lines: 'degree' is not the name of a line; did you mean 'degrees'?",
                "annotate | --home | A | minor | pentatonic # --home: 'A' names no scale: write both, such as \"A minor"
                        + " pentatonic\"",
                "annotate | --home | A blues | --home | E blues # --home is given twice: give it once",
                "annotate | --chords | A7 | --chords | D7 # the chords come from one --chords or one --form: give only one",
                "annotate | --chords | A7 | --form | twelve-bar A # the chords come from one --chords or one --form: give"
                        + " only one",
                "annotate | --form | twelve-bar | A # --form: write a form's name and its key as one value, such as"
                        + " \"twelve-bar A\"",
                "annotate | --form | ballad A # --form: 'ballad' is not the name of a form; there are: twelve-bar,"
                        + " quick-change, eight-bar, minor-twelve-bar, jazz-twelve-bar",
                "annotate | --form-start | 2 # --form-start says where --chords or --form begin: give one of these too",
                "annotate | --line | box # there is no option '--line'; did you mean '--lines'?",
                "annotate | --Home | A blues # there is no option '--Home'; did you mean '--home'?",
                "annotate | -x # there is no option '-x'",
                "annotate | --min-severity | error # there is no option '--min-severity'",
                "annotate | b.xml # 'b.xml' is a word too many: annotate takes one SCORE, and a value with spaces in it stands"
                        + " in quotes",
                "annotate | --all-notes # --all-notes adds to the findings: say with --findings where they go",
                "strip | --lines | box # there is no option '--lines'",
                "strip | b.xml # 'b.xml' is a word too many: strip takes one SCORE, and a value with spaces in it stands in"
                        + " quotes",
                "check | --only # --only needs a value: CHECK",
                "check | --only | offneck # 'offneck' is no check; did you mean 'off-neck'?",
                "check | --min-severity | fatal # --min-severity: 'fatal' is not the name of a severity; there are: error,"
                        + " warning, hint",
                "check | --min-severity | hint | --min-severity | error # --min-severity is given twice: give it once",
                "check | -o | x.xml # there is no option '-o'"
            })
    @DisplayName("of each slip one line says what it is, and what would do")
    void slips(String words, String sentence) {
        List<String> arguments = new ArrayList<>(List.of(words.split(" \\| ", -1)));
        arguments.add(1, SCORE);

        Session session = Session.run(arguments);

        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err())
                .isEqualTo("fretgloss: " + sentence + " (see 'fretgloss " + arguments.get(0) + " --help')\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            quoteCharacter = '`',
            value = {
                "anotate solo.xml # there is no command 'anotate'; did you mean 'annotate'?",
                "play # there is no command 'play'; there are: annotate, strip, check, rules, help",
                "help play # there is no command 'play'; there are: annotate, strip, check, rules, help",
                "--loud # there is no option '--loud'"
            })
    @DisplayName("a command that there is not")
    void commands(String words, String sentence) {
        Session session = Session.run(words.split(" ", -1));

        assertThat(session.exit()).isEqualTo(2);
        assertThat(session.err()).isEqualTo("fretgloss: " + sentence + " (see 'fretgloss --help')\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"annotate", "strip", "check"})
    @DisplayName("a name that is empty")
    void emptyName(String command) {
        assertThat(Session.run(command, "").err())
                .isEqualTo("fretgloss: '': an empty name is no file's: name a file, or - for the standard streams\n");
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
