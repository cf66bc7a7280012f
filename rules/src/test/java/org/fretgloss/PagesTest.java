package org.fretgloss;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.fretgloss.checks.BuiltInChecks;
import org.fretgloss.marks.BuiltInMarks;
import org.fretgloss.page.PageCheck;
import org.fretgloss.page.PageExamples;
import org.fretgloss.page.RulePage;
import org.fretgloss.rule.Rule;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The pages of the built-in rules are their tests: each is whole, and every example on it holds. */
class PagesTest {

    @TestFactory
    Stream<DynamicContainer> everyPage() {
        return Stream.of(new BuiltInMarks(), new BuiltInChecks())
                .flatMap(provider -> provider.rules().stream())
                .map(rule -> DynamicContainer.dynamicContainer(rule.id(), testsOf(rule)));
    }

    private static Stream<DynamicTest> testsOf(Rule rule) {
        DynamicTest whole = DynamicTest.dynamicTest(
                "is whole", () -> assertThat(PageCheck.complaints(rule)).isEmpty());
        Stream<DynamicTest> examples = RulePage.of(rule).stream()
                .flatMap(page -> page.examples().stream())
                .map(example -> DynamicTest.dynamicTest(
                        example.toString(),
                        () -> assertThat(PageExamples.run(rule, example)).isEmpty()));
        return Stream.concat(Stream.of(whole), examples);
    }
}
