package org.fretgloss.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.rule.Rules.analysis;
import static org.fretgloss.rule.Rules.finding;
import static org.fretgloss.rule.Rules.provider;
import static org.fretgloss.rule.Rules.rule;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextsTest {

    private static final String MUSIC = "| 3/5:1 3/7 3/5 3/7 | 3/5:1 3/7 3/5 3/7 |";

    private static final Rule BEND =
            rule("bend", solo -> Stream.of(finding(solo, 0, "full").build()));

    private static List<String> texts(Map<String, Settings> settings, Rule... rules) {
        return Rulebook.of(provider(rules)).examine(analysis(MUSIC), settings).glosses().stream()
                .map(gloss -> gloss.text().orElse("-"))
                .toList();
    }

    private static Rule absorbing(UnaryOperator<Finding.Builder> change) {
        return rule("third", solo -> {
            Finding.Builder third =
                    finding(solo, 0, "third").absorbing("bend", solo.notes().get(0));
            return Stream.of(change.apply(third).build());
        });
    }

    @Test
    void anAbsorbedFindingIsNotWritten() {
        assertThat(texts(Map.of(), BEND, absorbing(third -> third))).containsExactly("-", "third");
    }

    @Test
    void absorbsOnlyTheRuleAndNoteItNames() {
        Rule other = rule("other", solo -> Stream.of(finding(solo, 0, "other").build()));
        Rule later = rule("bend", solo -> Stream.of(finding(solo, 1, "later").build()));
        assertThat(texts(Map.of(), later, other, absorbing(third -> third))).containsExactly("other", "third", "later");
    }

    @Test
    void whatIsNotWrittenItselfAbsorbsNothing() {
        assertThat(texts(Map.of(), BEND, absorbing(Finding.Builder::unwritten))).containsExactly("full", "-");
        assertThat(texts(Map.of(), BEND, absorbing(third -> third.confidence(0.4))))
                .containsExactly("full", "-");
    }

    @Test
    void anUnsureFindingIsNotWritten() {
        Rule unsure = rule(
                "unsure",
                solo -> Stream.of(finding(solo, 0, "maybe").confidence(0.49).build()));
        assertThat(texts(Map.of(), unsure)).containsExactly("-");
        Settings bold = Settings.of(unsure, Map.of("threshold", "0.3"));
        assertThat(texts(Map.of("unsure", bold), unsure)).containsExactly("maybe");
    }

    @Test
    void theSameTextIsWrittenOnceInABar() {
        Rule every = rule(
                "every",
                solo -> solo.notes().stream()
                        .map(note -> finding(solo, note.index(), "same").build()));
        assertThat(texts(Map.of(), every)).containsExactly("same", "-", "-", "-", "same", "-", "-", "-");
    }

    @Test
    void anotherTextBetweenLetsItStandAgain() {
        Rule changing = rule(
                "changing",
                solo -> Stream.of(
                        finding(solo, 0, "a").build(),
                        finding(solo, 1, "b").build(),
                        finding(solo, 2, "a").build(),
                        finding(solo, 3, "a").build()));
        assertThat(texts(Map.of(), changing)).containsExactly("a", "b", "a", "-");
    }

    @Test
    void linesDoNotHinderEachOther() {
        Rule moves = rule("moves", solo -> Stream.of(finding(solo, 0, "same").build()));
        Rule notes = rule(
                "notes", Line.NOTES, solo -> Stream.of(finding(solo, 0, "same").build()));
        assertThat(texts(Map.of(), moves, notes)).containsExactly("same", "same");
    }
}
