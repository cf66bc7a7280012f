package org.fretgloss.annotator.slips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.annotator.slips.TrapScore.TUNING;
import static org.fretgloss.annotator.slips.TrapScore.bar;
import static org.fretgloss.annotator.slips.TrapScore.doubts;
import static org.fretgloss.annotator.slips.TrapScore.plain;
import static org.fretgloss.annotator.slips.TrapScore.score;
import static org.fretgloss.annotator.slips.TrapScore.struck;

import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Severity;
import org.junit.jupiter.api.Test;

/** What a score says, or does not say, about its staves and strings: ways of writing that are no slips, and slips in them. */
class SilentStavesTest {

    private static final String FOUR =
            plain("C", 4, 5, 1) + plain("D", 4, 7, 1) + plain("C", 4, 5, 1) + plain("D", 4, 7, 1);

    /** D2 and F2 on a string 6 that is tuned down to D, which the score does not say. */
    private static final String LOW =
            struck("", "D", 2, 6, 0, 1, "", "") + struck("", "F", 2, 6, 3, 1, "", "") + plain("D", 4, 7, 2);

    /** Nobody wrote how the strings are tuned: one string that disagrees with standard tuning throughout is tuned otherwise. */
    @Test
    void leavesAStringAloneWhoseTuningIsMissing() throws ScoreException {
        String bars =
                bar(2, FOUR) + bar(3, FOUR) + bar(4, FOUR) + bar(5, FOUR) + bar(6, FOUR) + bar(7, LOW) + bar(8, FOUR);

        assertThat(doubts(score("", FOUR, bars), Severity.WARNING)).isEmpty();
    }

    /** The same notes under a written standard tuning are slips. */
    @Test
    void doubtsAStringWhoseTuningIsWritten() throws ScoreException {
        String bars =
                bar(2, FOUR) + bar(3, FOUR) + bar(4, FOUR) + bar(5, FOUR) + bar(6, FOUR) + bar(7, LOW) + bar(8, FOUR);

        assertThat(doubts(score(TUNING, FOUR, bars), Severity.WARNING))
                .extracting(Gloss::rule)
                .containsExactly("pitch-against-fret", "pitch-against-fret");
    }

    /** Without a written tuning one note of a string that otherwise agrees is a slip all the same. */
    @Test
    void doubtsOneNoteWhereTheTuningIsMissing() throws ScoreException {
        String bars = bar(2, FOUR) + bar(3, FOUR) + bar(4, plain("C", 4, 6, 2) + plain("D", 4, 7, 2));

        assertThat(doubts(score("", FOUR, bars), Severity.WARNING))
                .extracting(Gloss::rule)
                .containsExactly("pitch-against-fret");
    }

    /** Each note on the notation staff, and again on the TAB staff below it. */
    @Test
    void takesTheSameNoteOnTwoStavesForOne() throws ScoreException {
        assertThat(doubts(score(twoStaves(), onBoth(FOUR, FOUR), bar(2, onBoth(FOUR, FOUR))), Severity.WARNING))
                .isEmpty();
    }

    /** The notation staff tells pitches alone. */
    @Test
    void takesANoteWhoseStringOnlyTheTabTellsForOne() throws ScoreException {
        String bare = FOUR.replaceAll("<notations>.*?</notations>", "");

        assertThat(doubts(score(twoStaves(), onBoth(bare, FOUR), bar(2, onBoth(bare, FOUR))), Severity.WARNING))
                .isEmpty();
    }

    private static String twoStaves() {
        return "<staves>2</staves><clef number=\"1\"><sign>G</sign><line>2</line></clef>"
                + "<clef number=\"2\"><sign>TAB</sign><line>5</line></clef>"
                + TUNING.replace("<staff-details>", "<staff-details number=\"2\">");
    }

    private static String onBoth(String notation, String tab) {
        return onStaff(1, notation) + "<backup><duration>4</duration></backup>" + onStaff(2, tab);
    }

    private static String onStaff(int staff, String notes) {
        return notes.replaceAll("</duration>", "</duration><voice>" + staff + "</voice><staff>" + staff + "</staff>");
    }
}
