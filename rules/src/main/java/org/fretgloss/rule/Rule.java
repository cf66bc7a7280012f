package org.fretgloss.rule;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;

/**
 * One thing worth telling a student, found in a solo. A rule keeps no state: the same analysis and settings give the
 * same findings, in any order of calls.
 *
 * <p>Its page is a Markdown file named {@code <id>.md} beside the class.
 */
public interface Rule {

    /** How sure a rule must be before its text is written; every rule has this option. */
    Option<Double> THRESHOLD =
            Option.ofShare("threshold", 0.5, "least confidence with which the text is written into the score");

    /** The class's name in kebab-case, less a final {@code Rule}. */
    default String id() {
        return getClass()
                .getSimpleName()
                .replaceAll("Rule$", "")
                .replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-")
                .toLowerCase(Locale.ROOT);
    }

    /** The lyric line on which its texts stand. */
    Line line();

    /** Whether it doubts what is written, rather than explaining what is played: it writes on the line of doubts. */
    default boolean isCheck() {
        return line() == Line.DOUBTS;
    }

    /**
     * Whether it has nothing to look at where no note has a string and a fret: then a check is left out, and the user is
     * told so.
     */
    default boolean needsFrets() {
        return false;
    }

    /** The rule's own options, besides {@link #THRESHOLD}. */
    default List<Option<?>> options() {
        return List.of();
    }

    /** The findings, in any order; an empty stream where there is nothing to say. */
    Stream<Finding> examine(Analysis analysis, Settings settings);
}
