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

class PageExamplesTest {

    /** Marks notes from a fret on. */
    private static final class High implements Rule {

        private static final Option<Integer> FROM = Option.ofInt("from", 12, 0, 24, "lowest fret marked");

        @Override
        public Line line() {
            return Line.NOTES;
        }

        @Override
        public List<Option<?>> options() {
            return List.of(FROM);
        }

        @Override
        public Stream<Finding> examine(Analysis analysis, Settings settings) {
            return analysis.solo().notes().stream()
                    .filter(note -> note.at().orElseThrow().fret() >= settings.get(FROM))
                    .map(note ->
                            Finding.at(note).text("high").explain("High up.").build());
        }
    }

    private static List<String> run(boolean fires, String text) {
        return PageExamples.run(new High(), new PageExample(1, fires, text));
    }

    @Test
    void anExampleThatHolds() {
        assertThat(run(true, "3/7:2 3/12\n=> bar 1 beat 3: high")).isEmpty();
        assertThat(run(true, "option: from=7\n3/7:2 3/5\n=> bar 1 beat 1: high"))
                .isEmpty();
        assertThat(run(false, "3/7:4")).isEmpty();
    }

    @Test
    void everyFindingMustBeExpected() {
        assertThat(run(true, "3/12:2 3/12\n=> bar 1 beat 1: high"))
                .containsExactly("expected \n  => bar 1 beat 1: high\n but found \n  => bar 1 beat 1: high"
                        + "\n  => bar 1 beat 3: (unwritten)\n");
        assertThat(run(true, "3/7:2 3/12\n=> bar 1 beat 3: low")).hasSize(1);
        assertThat(run(true, "3/7:4\n=> bar 1 beat 1: high"))
                .singleElement()
                .asString()
                .endsWith("found nothing");
    }

    @Test
    void aSilentExampleMustStaySilent() {
        assertThat(run(false, "3/12:4")).singleElement().asString().startsWith("expected nothing but found");
    }

    @Test
    void anExampleSaysWhatItExpects() {
        assertThat(run(true, "3/12:4")).singleElement().asString().contains("says nowhere what must be found");
        assertThat(run(false, "3/12:4\n=> bar 1 beat 1: high")).containsExactly("a silent example expects nothing");
    }

    @Test
    void whatCannotBeReadIsTold() {
        assertThat(run(true, "3/12:5")).singleElement().asString().contains("bar 1 holds 5 quarter notes");
        assertThat(run(false, "option: form=2\n3/7:4"))
                .containsExactly("the example cannot be read: rule 'high': no option 'form'");
    }

    @Test
    void aRuleThatBreaksIsTold() {
        assertThat(run(false, "C1:4")).singleElement().asString().contains("failed before its first finding");
    }
}
