package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a teacher sees where the chords come from what another part plays. */
class InferredChordsTest {

    private static final String PIANO = "../fixtures/reading/accompaniment/piano-on-two-staves.musicxml";
    private static final String TOLD = "note: the score names no chords: they are inferred from what 'Piano' plays";

    @Test
    void isToldOnceAndInTheSummary() {
        Session session = Session.run("annotate", PIANO, "-o", "-");
        assertThat(session.exit()).isZero();
        assertThat(session.err()).containsOnlyOnce(TOLD).contains("chords: A7 D7 (inferred");
    }

    @Test
    void namesTheChordsWhereTheyAreAskedFor() {
        assertThat(Session.run("annotate", PIANO, "-o", "-", "--lines", "chords")
                        .text())
                .containsSubsequence("<text>A7</text>", "<measure number=\"2\">", "<text>D7</text>");
        assertThat(Session.run("annotate", PIANO, "-o", "-").text()).doesNotContain("fretgloss:chords");
    }

    @Test
    void givesWayToWhatTheUserSays() {
        Session session = Session.run("annotate", PIANO, "-o", "-", "--chords", "Am7 | %");
        assertThat(session.err()).doesNotContain("inferred from what").contains("chords: Am7 (as you gave them");
    }

    @Test
    void doesNotDoubtTheSoloForAGuess() {
        Session session = Session.run("check", PIANO, "--min-severity", "hint");
        assertThat(session.text()).doesNotContain("chord-symbol");
        assertThat(session.err()).contains(TOLD);
    }
}
