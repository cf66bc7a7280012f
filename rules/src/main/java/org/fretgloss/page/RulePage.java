package org.fretgloss.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.rule.Rule;

/**
 * The page of a rule: the same text serves readers, and its examples are tests. It is a Markdown file named
 * {@code <id>.md} beside the rule's class: a title, one sentence, and the {@linkplain #SECTIONS sections}. Blocks fenced
 * with {@code ```fires} and {@code ```silent} in its examples are written as {@link SoloText}.
 *
 * @param text the whole page
 * @param title without the sign for a heading
 * @param summary the sentence under the title
 * @param sections the text of each section by its title, in the page's order
 * @param examples in order
 */
public record RulePage(
        String text, String title, String summary, Map<String, String> sections, List<PageExample> examples) {

    public static final String OPTIONS = "Options";
    public static final String EXAMPLES = "Examples";
    public static final String SOURCES = "Sources";

    /** The titles of the sections, in order. */
    public static final List<String> SECTIONS =
            List.of("Why it matters", "When this is wrong", OPTIONS, EXAMPLES, SOURCES);

    public RulePage {
        sections = Collections.unmodifiableMap(new LinkedHashMap<>(sections));
        examples = List.copyOf(examples);
    }

    /** The page beside a rule's class, if there is one. */
    public static Optional<RulePage> of(Rule rule) {
        try (InputStream page = rule.getClass().getResourceAsStream(rule.id() + ".md")) {
            return page == null
                    ? Optional.empty()
                    : Optional.of(parse(new String(page.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("the page of the rule '" + rule.id() + "' cannot be read", e);
        }
    }

    /** Reads a page. What it lacks is empty: {@link PageCheck} tells. */
    public static RulePage parse(String text) {
        return new PageParser(text).parse();
    }

    /** A section's text; empty where the page does not have it. */
    public String section(String name) {
        return sections.getOrDefault(name, "");
    }
}
