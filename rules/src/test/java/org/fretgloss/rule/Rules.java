package org.fretgloss.rule;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Solo;

/** Rules and providers for tests of the rulebook. */
final class Rules {

    private Rules() {}

    /** A rule on the moves line by what it finds. */
    static Rule rule(String id, Function<Solo, Stream<Finding>> examine) {
        return rule(id, Line.MOVES, examine);
    }

    /** A rule by what it finds. */
    static Rule rule(String id, Line line, Function<Solo, Stream<Finding>> examine) {
        return new Rule() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public Line line() {
                return line;
            }

            @Override
            public Stream<Finding> examine(Analysis analysis, Settings settings) {
                return examine.apply(analysis.solo());
            }
        };
    }

    static RuleProvider provider(String name, int level, Rule... rules) {
        return new RuleProvider() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public int interfaceLevel() {
                return level;
            }

            @Override
            public List<Rule> rules() {
                return List.of(rules);
            }
        };
    }

    static RuleProvider provider(Rule... rules) {
        return provider("our rules", RuleProvider.INTERFACE_LEVEL, rules);
    }

    /** A finding with a text. */
    static Finding.Builder finding(Solo solo, int note, String text) {
        return Finding.at(solo.notes().get(note)).text(text).explain("As it is.");
    }

    /** The analysis of a solo about which nothing is said. */
    static Analysis analysis(String text) {
        return Analysis.of(SoloText.parse(text).solo(), Given.NOTHING);
    }
}
