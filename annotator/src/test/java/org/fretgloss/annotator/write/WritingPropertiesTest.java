package org.fretgloss.annotator.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.generated.GeneratedScore;
import org.fretgloss.rule.Line;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every score, tried on many that were made up from seeds. */
class WritingPropertiesTest {

    private static final int SCORES = 120;

    private static final Stamp STAMP = new Stamp("1.2.3", Map.of("chords", "A7 | <D7> & \"E♭7\""));

    static LongStream seeds() {
        return LongStream.range(0, SCORES);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("stripping gives the original back, character by character")
    void strippingUndoesAnnotating(long seed) throws ScoreException {
        String original = GeneratedScore.of(seed).text();

        Stripped stripped = Stripper.strip(annotated(seed));

        assertThat(stripped.text()).isEqualTo(original);
        assertThat(stripped.edits()).isEqualTo(Stripped.Edits.NONE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("the output holds the input in order: nothing is changed, everything new is inserted")
    void onlyInsertions(long seed) throws ScoreException {
        String original = GeneratedScore.of(seed).text();
        String annotated = annotated(seed);

        int found = 0;
        for (int i = 0; i < annotated.length() && found < original.length(); i++) {
            found += annotated.charAt(i) == original.charAt(found) ? 1 : 0;
        }

        assertThat(found).isEqualTo(original.length());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("annotating the stripped output again gives the same output")
    void annotatingTwiceIsAnnotatingOnce(long seed) throws ScoreException {
        String once = annotated(seed);

        String twice = annotate(Stripper.strip(once).text(), texts(seed));

        assertThat(twice).isEqualTo(once);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("seen as XML, only our elements were added")
    void onlyOurElements(long seed) throws ScoreException {
        assertThat(OurElements.differencesBesides(GeneratedScore.of(seed).text(), annotated(seed)))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("saved again by another program, our elements still go and nothing else does")
    void savedAgain(long seed) throws ScoreException {
        Stripped stripped = Stripper.strip(OurElements.savedAgain(annotated(seed)));

        assertThat(stripped.text()).doesNotContain("fretgloss");
        assertThat(stripped.edits()).isEqualTo(Stripped.Edits.NONE);
        assertThat(OurElements.differences(GeneratedScore.of(seed).text(), stripped.text()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("a valid score stays valid")
    void validStaysValid(long seed) throws ScoreException {
        GeneratedScore score = GeneratedScore.of(seed);
        if (score.isInSchema()) {
            assertThat(MusicXmlSchema.complaint(score.text())).isEmpty();
            assertThat(MusicXmlSchema.complaint(annotated(seed))).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @DisplayName("every lyric that was asked for can be read back, one for each line and note")
    void lyricsReadBack(long seed) throws ScoreException {
        List<LineText> texts = texts(seed);

        ScoreScan scan = ScoreScan.of(annotated(seed));

        assertThat(scan.ours().stream()
                        .map(lyric -> new LineText(
                                Line.named(lyric.ourLine().orElseThrow()).orElseThrow(), lyric.note(), lyric.text())))
                .containsExactlyElementsOf(texts);
    }

    private static String annotated(long seed) throws ScoreException {
        return annotate(GeneratedScore.of(seed).text(), texts(seed));
    }

    private static String annotate(String text, List<LineText> texts) throws ScoreException {
        return ScoreWriter.annotate(ScoreScan.of(text), texts, STAMP, UTF_8);
    }

    /** Random texts of up to five lines, in document order and the order of lines; there may be none. */
    private static List<LineText> texts(long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        List<LineText> texts = new ArrayList<>();
        for (int element : GeneratedScore.of(seed).sounding()) {
            for (Line line : List.of(Line.BOX, Line.MOVES, Line.OUTLINE, Line.NOTES, Line.DEGREES)) {
                if (random.nextInt(3) == 0) {
                    texts.add(new LineText(line, element, "½ ♭3→3 · <" + random.nextInt(100) + ">"));
                }
            }
        }
        return texts;
    }
}
