package org.fretgloss.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.rule.Rule;

/**
 * Checks that a rule has a page and that the page is whole: title, sentence, every section in its place and not empty,
 * the options as they are declared, a firing and a silent example. {@link PageExamples} runs the examples themselves.
 */
public final class PageCheck {

    private PageCheck() {}

    /** What is missing or wrong, each in a sentence; none where the page is whole. */
    public static List<String> complaints(Rule rule) {
        Optional<RulePage> page = RulePage.of(rule);
        return page.map(present -> complaints(rule, present))
                .orElseGet(() -> List.of("there is no page: write " + rule.id() + ".md beside "
                        + rule.getClass().getName()));
    }

    /** The same for a page at hand. */
    public static List<String> complaints(Rule rule, RulePage page) {
        List<String> complaints = new ArrayList<>();
        if (page.title().isEmpty()) {
            complaints.add("the page has no title ('# Title')");
        }
        if (!page.summary().endsWith(".") || page.summary().contains("\n\n")) {
            complaints.add("under the title should stand one sentence that says what the rule finds");
        }
        if (!List.copyOf(page.sections().keySet()).equals(RulePage.SECTIONS)) {
            complaints.add("the sections should be " + String.join(", ", RulePage.SECTIONS) + ", and not "
                    + String.join(", ", page.sections().keySet()));
        }
        RulePage.SECTIONS.stream()
                .filter(name -> page.section(name).isEmpty())
                .forEach(name -> complaints.add("the section '" + name + "' is empty"));
        OptionTable.differences(page.section(RulePage.OPTIONS), rule.options()).forEach(complaints::add);
        missingExamples(page).forEach(complaints::add);
        return complaints;
    }

    private static Stream<String> missingExamples(RulePage page) {
        return Stream.of(true, false)
                .filter(fires -> page.examples().stream().noneMatch(example -> example.fires() == fires))
                .map(fires -> fires
                        ? "there is no example that must be found (a block fenced with ```fires)"
                        : "there is no example that must stay silent (a block fenced with ```silent)");
    }
}
