package org.fretgloss.annotator.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Line;
import org.fretgloss.solo.Note;
import org.junit.jupiter.api.Test;

/** The lines that no rule writes: chords and degrees. */
class LineComposerTest {

    private static final LineChoice CHORDS = LineChoice.of(Set.of(Line.CHORDS));

    /** "ordinal text" of all that is written; the carrier of an ordinal is 0 where no note may bear its lyric. */
    private static List<String> written(String text, LineChoice choice, IntUnaryOperator carrier) {
        Analysis analysis = SoloText.parse(text).analysis();
        Map<Integer, Integer> carriers = analysis.solo().notes().stream()
                .map(Note::ordinal)
                .filter(ordinal -> carrier.applyAsInt(ordinal) > 0)
                .collect(Collectors.toMap(ordinal -> ordinal, carrier::applyAsInt));
        return LineComposer.compose(analysis, List.of(), carriers, choice).texts().stream()
                .map(line -> line.element() + " " + line.text())
                .toList();
    }

    private static List<String> written(String text, LineChoice choice) {
        return written(text, choice, IntUnaryOperator.identity());
    }

    @Test
    void aChordStandsAtTheFirstNoteThatStartsUnderIt() {
        // The rest is element 3, the note tied into bar 2 elements 4 and 5.
        assertThat(written("chords: A7 | D7 | E7\n| 3/7:1 3/5 r 3/7 | -:1 3/5:3 | 3/7:4 |", CHORDS))
                .containsExactly("1 A7", "6 D7", "7 E7");
    }

    @Test
    void aChordUnderWhichNoNoteStartsIsNotWritten() {
        assertThat(written("chords: A7 | D7 | E7\n| 3/7:4 | r:4 | 3/7:4 |", CHORDS))
                .containsExactly("1 A7", "3 E7");
        assertThat(written("chords: A7 | D7\n| r:4 | 3/7:2 3/5 |", CHORDS)).containsExactly("2 D7");
        assertThat(written("chords: A7 | D7\n| 3/7:2 3/5 | r:4 |", CHORDS)).containsExactly("1 A7");
    }

    @Test
    void aNoteThatMayBearNoLyricIsPassedOver() {
        assertThat(written("chords: A7 | D7\n| 3/7:2 3/5 | 3/7:2 3/5 |", CHORDS, ordinal -> ordinal == 3 ? 0 : ordinal))
                .containsExactly("1 A7", "4 D7");
        assertThat(written("chords: A7 | D7\n| 3/7:2 3/5 | 3/7:2 3/5 |", CHORDS, ordinal -> ordinal < 3 ? ordinal : 0))
                .containsExactly("1 A7");
    }

    @Test
    void severalChordsOfABarStandAtTheirNotes() {
        assertThat(written("chords: A7 D7 | E7\n| 3/7:1 3/5 3/7 3/5 | 3/7:4 |", CHORDS))
                .containsExactly("1 A7", "3 D7", "5 E7");
    }

    @Test
    void chordsAreNumberedFromTheHomeOnRequest() {
        assertThat(written(
                        "home: A minor pentatonic\nchords: A7 | D7\n| 3/7:4 | 3/7:4 |",
                        new LineChoice(Set.of(Line.CHORDS), false, true)))
                .containsExactly("1 I", "2 IV");
    }

    @Test
    void everyNoteHasItsDegreeAsItIsHeard() {
        // A bend by its peak, an octave once, a dead note not at all.
        assertThat(written(
                        "home: A minor pentatonic\n| 4/7:1 3/7b2:1 4/7+1/5:1 x3/5:1 |",
                        LineChoice.of(Set.of(Line.DEGREES)),
                        ordinal -> ordinal == 4 ? 3 : ordinal))
                .containsExactly("1 1", "2 5", "3 1");
    }
}
