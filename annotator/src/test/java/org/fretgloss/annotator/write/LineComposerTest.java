package org.fretgloss.annotator.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.page.SoloText;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Line;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.junit.jupiter.api.Test;

/** How texts are laid under notes, and the lines that no rule writes: chords and degrees. */
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

    /** A gloss on the note of an index. */
    private static Gloss gloss(Solo solo, Line line, int index, String text) {
        Finding finding = Finding.at(solo.notes().get(index)).explain("because").build();
        return new Gloss("a-rule", line, finding, Optional.of(text));
    }

    @Test
    void textsOfOneMomentJoinInTheirOrder() {
        Analysis analysis = SoloText.parse("| 3/7+2/8:2 1/5:2 |").analysis();
        Solo solo = analysis.solo();
        List<Gloss> glosses = List.of(
                gloss(solo, Line.NOTES, 0, "♭2"),
                gloss(solo, Line.MOVES, 0, "½ ♭3→3"),
                gloss(solo, Line.NOTES, 1, "6"),
                gloss(solo, Line.NOTES, 1, "♭2"),
                gloss(solo, Line.SHAPE, 1, "climax"),
                gloss(solo, Line.MOVES, 2, "1½ 5→♭7"));
        Map<Integer, Integer> carriers = Map.of(1, 1, 2, 1, 3, 3);
        Set<Line> lines = Set.of(Line.NOTES, Line.MOVES);

        assertThat(LineComposer.compose(analysis, glosses, carriers, LineChoice.of(lines))
                        .texts())
                .containsExactly(
                        new LineText(Line.MOVES, 1, "½ ♭3→3"),
                        new LineText(Line.NOTES, 1, "♭2 · 6"),
                        new LineText(Line.MOVES, 3, "1½ 5→♭7"));
        assertThat(LineComposer.compose(analysis, glosses, carriers, new LineChoice(lines, true, false))
                        .texts())
                .extracting(LineText::text)
                .containsExactly("1/2 b3->3", "b2 ; 6", "1 1/2 5->b7");
    }

    @Test
    void whatNoNoteMayBearIsReportedBack() {
        Analysis analysis = SoloText.parse("| 3/7:2 1/5:2 |").analysis();
        Gloss borne = gloss(analysis.solo(), Line.NOTES, 0, "6");
        Gloss lost = gloss(analysis.solo(), Line.NOTES, 1, "2");
        Gloss lostOnALineThatIsOff = gloss(analysis.solo(), Line.SHAPE, 1, "space 5");
        Gloss unwritten = gloss(analysis.solo(), Line.NOTES, 1, "2").unwritten();

        Composition composition = LineComposer.compose(
                analysis,
                List.of(borne, lost, lostOnALineThatIsOff, unwritten),
                Map.of(1, 1),
                LineChoice.of(Set.of(Line.NOTES)));

        assertThat(composition.texts()).containsExactly(new LineText(Line.NOTES, 1, "6"));
        assertThat(composition.uncarried()).containsExactly(lost, lostOnALineThatIsOff);
    }
}
