package org.fretgloss.annotator.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ScoreSizeTest {

    @Test
    void countsEachElementOnceWhereItBegins() {
        ScoreSize size = ScoreSize.of(
                "<part id='P1'><measure><note/><note><lyric><text/></lyric></note><notes/></measure></part>");

        assertThat(size.notes().count()).isEqualTo(2);
        assertThat(size.bars().count()).isEqualTo(2);
        assertThat(size.lyrics().count()).isEqualTo(1);
        assertThat(size.others().count()).isEqualTo(2);
    }

    @Test
    void passesOverEndTagsCommentsInstructionsAndTexts() {
        ScoreSize size = ScoreSize.of("<?xml version='1.0'?><!DOCTYPE a><a><!-- a note --><?note?>5 &lt; 6 note</a>");

        assertThat(size.notes().count()).isZero();
        assertThat(size.others().count()).isEqualTo(1);
    }

    @Test
    void knowsElementsBehindAPrefixAndBeforeALineBreak() {
        ScoreSize size = ScoreSize.of("<m:note\n x='1'/><m:note>");

        assertThat(size.notes().count()).isEqualTo(2);
    }

    @Test
    void aTagThatIsCutOffIsNoTrouble() {
        assertThat(ScoreSize.of("<").most().count()).isEqualTo(1);
        assertThat(ScoreSize.of("<note").notes().count()).isEqualTo(1);
    }

    @Test
    void aTextWithOneWideLetterTakesTwiceTheMemory() {
        assertThat(ScoreSize.of("♭" + "a".repeat(999)).bytesToRead())
                .isEqualTo(2 * ScoreSize.of("é" + "a".repeat(999)).bytesToRead());
    }

    @Test
    void namesWhatTakesMost() {
        assertThat(ScoreSize.of("<a/><note/>").most().name()).isEqualTo("notes");
        assertThat(ScoreSize.of("<a/>".repeat(20) + "<note/>").most().name()).isEqualTo("elements");
        assertThat(ScoreSize.of("<a>" + "a".repeat(100)).most().name()).isEqualTo("characters");
    }
}
