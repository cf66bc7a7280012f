package org.fretgloss.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fretgloss.rule.Rules.analysis;
import static org.fretgloss.rule.Rules.finding;
import static org.fretgloss.rule.Rules.provider;
import static org.fretgloss.rule.Rules.rule;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fretgloss.pitch.UnknownNameException;
import org.junit.jupiter.api.Test;

class RulebookTest {

    private static final String TWO_BARS = "| 3/5:2 g3/5 3/7:2 | 2/8+1/8:4 |";

    private static List<String> found(Examination examination) {
        return examination.glosses().stream()
                .map(gloss -> gloss.rule() + " " + gloss.finding().note().index())
                .toList();
    }

    @Test
    void ordersFindingsByOnsetThenByRule() {
        Rule early = rule(
                "early",
                solo -> Stream.of(3, 2, 0).map(note -> finding(solo, note, "a").build()));
        Rule late = rule(
                "late",
                solo -> Stream.of(4, 3, 1, 0)
                        .map(note -> finding(solo, note, "b").build()));
        assertThat(found(Rulebook.of(provider(early, late)).examine(analysis(TWO_BARS), Map.of())))
                .as("note 1 is a grace note before note 2; 3 and 4 are struck together")
                .containsExactly("early 0", "late 0", "early 2", "late 1", "early 3", "late 3", "late 4");
    }

    @Test
    void aFindingStandsOnItsRulesLine() {
        Rule shape = rule(
                "shape", Line.SHAPE, solo -> Stream.of(finding(solo, 0, "a").build()));
        Rule moves = rule(
                "moves", Line.MOVES, solo -> Stream.of(finding(solo, 0, "b").build()));
        assertThat(Rulebook.of(provider(shape, moves))
                        .examine(analysis(TWO_BARS), Map.of())
                        .glosses())
                .extracting(Gloss::line)
                .containsExactly(Line.SHAPE, Line.MOVES);
    }

    @Test
    void aRuleThatBreaksLeavesNothingBehindAndTheOthersGoOn() {
        Rule breaks = rule(
                "breaks",
                solo -> solo.notes().stream().map(note -> {
                    if (note.index() > 2) {
                        throw new IllegalStateException("lost count");
                    }
                    return finding(solo, note.index(), "here").build();
                }));
        Rule works = rule("works", solo -> Stream.of(finding(solo, 0, "there").build()));
        Examination examination = Rulebook.of(provider(breaks, works)).examine(analysis(TWO_BARS), Map.of());
        assertThat(found(examination)).containsExactly("works 0");
        assertThat(examination.failures())
                .extracting(RuleFailure::message)
                .containsExactly("the rule 'breaks' of our rules failed after its finding in bar 1 and was left out: "
                        + "java.lang.IllegalStateException: lost count");
    }

    @Test
    void aRuleThatCannotBeLinkedIsReportedToo() {
        Rule unlinked = rule("unlinked", solo -> {
            throw new NoClassDefFoundError("org/example/Gone");
        });
        Examination examination = Rulebook.of(provider(unlinked)).examine(analysis(TWO_BARS), Map.of());
        assertThat(examination.failures()).singleElement().satisfies(failure -> {
            assertThat(failure.rule()).isEqualTo("unlinked");
            assertThat(failure.after()).isEmpty();
            assertThat(failure.message()).contains("before its first finding").contains("org/example/Gone");
        });
    }

    @Test
    void aFindingStandsOnANoteOfTheSolo() {
        Rule stray = rule(
                "stray",
                solo -> Stream.of(finding(analysis("1/3:4").solo(), 0, "x").build()));
        assertThat(Rulebook.of(provider(stray))
                        .examine(analysis(TWO_BARS), Map.of())
                        .failures())
                .extracting(failure -> failure.cause().getMessage())
                .containsExactly("a finding stands on a note that is not in the solo");
    }

    @Test
    void namesTheRulesThereAreWhereOneIsUnknown() {
        Rule silent = rule("silent", solo -> Stream.empty());
        Rulebook rulebook = Rulebook.of(provider(silent));
        assertThat(rulebook.rule("silent")).isSameAs(silent);
        assertThatThrownBy(() -> rulebook.rule("silence")).isInstanceOfSatisfying(UnknownNameException.class, e -> {
            assertThat(e.given()).isEqualTo("silence");
            assertThat(e.known()).containsExactly("silent");
        });
        assertThatThrownBy(() -> rulebook.examine(analysis(TWO_BARS), Map.of("silence", Settings.defaults())))
                .isInstanceOf(UnknownNameException.class);
    }
}
