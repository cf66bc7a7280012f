package org.fretgloss.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.RandomSolos;
import org.fretgloss.rule.Examination;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.rule.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuiltInMarksTest {

    private static final Rulebook RULEBOOK = Rulebook.load(BuiltInMarksTest.class.getClassLoader());

    private static Analysis analysis(long seed) {
        return RandomSolos.of(seed).analysis();
    }

    private static List<Rule> marks() {
        return RULEBOOK.rules().stream().filter(rule -> !rule.isCheck()).toList();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @Test
    void areFoundByTheServiceLoaderInTheirOrder() {
        assertThat(marks())
                .extracting(Rule::id)
                .containsExactly(
                        "box", "reach", "bend", "third", "outline", "outside", "colour", "space", "phrase", "landing",
                        "climax");
        assertThat(RULEBOOK.refused()).isEmpty();
    }

    @Test
    void standOnTheirLines() {
        assertThat(marks())
                .extracting(Rule::line)
                .containsExactly(
                        Line.BOX,
                        Line.BOX,
                        Line.MOVES,
                        Line.MOVES,
                        Line.OUTLINE,
                        Line.NOTES,
                        Line.NOTES,
                        Line.SHAPE,
                        Line.PHRASES,
                        Line.PHRASES,
                        Line.SHAPE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void keepNoState(long seed) {
        Analysis one = analysis(seed);
        Analysis other = analysis(seed + 1000);
        List<Rule> rules = new BuiltInMarks().rules();
        List<Rule> fresh = new BuiltInMarks().rules();
        for (int i = 0; i < rules.size(); i++) {
            List<Finding> alone = examine(fresh.get(i), one).toList();
            Rule rule = rules.get(i);
            assertThat(interleaved(rule, one, other)).as(rule.id()).isEqualTo(alone);
            assertThat(examine(rule, one).toList()).as("%s again", rule.id()).isEqualTo(alone);
        }
    }

    /** The findings in one solo, each taken after one of another solo's from the same rule object. */
    private static List<Finding> interleaved(Rule rule, Analysis one, Analysis other) {
        Iterator<Finding> main = examine(rule, one).iterator();
        Iterator<Finding> meanwhile = examine(rule, other).iterator();
        List<Finding> found = new ArrayList<>();
        while (main.hasNext()) {
            if (meanwhile.hasNext()) {
                meanwhile.next();
            }
            found.add(main.next());
        }
        return found;
    }

    private static Stream<Finding> examine(Rule rule, Analysis analysis) {
        return rule.examine(analysis, Settings.defaults());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverFailAndStandInOrder(long seed) {
        Examination examination = RULEBOOK.examine(analysis(seed), Map.of());
        assertThat(examination.failures()).isEmpty();
        assertThat(examination.glosses())
                .extracting(gloss -> gloss.finding().note().onset())
                .isSorted();
        assertThat(examination.glosses())
                .allSatisfy(gloss -> assertThat(gloss.finding().confidence()).isBetween(0.5, 1.0));
        assertThat(examination.glosses())
                .allSatisfy(gloss -> assertThat(gloss.finding().explanation()).endsWith("."));
    }
}
