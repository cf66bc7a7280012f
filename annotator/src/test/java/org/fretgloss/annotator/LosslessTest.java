package org.fretgloss.annotator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.fretgloss.annotator.check.Kept;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.generated.Feature;
import org.fretgloss.annotator.generated.GeneratedScore;
import org.fretgloss.annotator.generated.Packing;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The whole way, from bytes to bytes, on made-up scores in all containers: nothing is lost and nothing is changed. */
class LosslessTest {

    private static final int SCORES = Integer.getInteger("fretgloss.scores", 2_100);
    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    @Test
    @DisplayName("stripping gives the bytes back, only insertions are made, valid stays valid, twice is once")
    void keepsEveryByte() {
        Map<String, Integer> seen = new TreeMap<>();
        Map<Feature, Integer> features = new EnumMap<>(Feature.class);
        LongStream.range(0, SCORES).parallel().forEach(seed -> {
            Packing packing = Packing.of(seed);
            GeneratedScore score = GeneratedScore.of(seed);
            Kept kept = check(seed, score, packing);
            synchronized (seen) {
                seen.merge(kept.hasLines() ? "with lines" : "without lines", 1, Integer::sum);
                seen.merge(kept.isValid() ? "valid" : "not valid", 1, Integer::sum);
                seen.merge(packing.archive().toString(), 1, Integer::sum);
                seen.merge(packing.declared() + " is " + packing.charset(), 1, Integer::sum);
                score.features().forEach(feature -> features.merge(feature, 1, Integer::sum));
            }
        });
        System.out.println("made-up scores: " + seen);
        System.out.println("made-up scores, by what they have: " + features);
        assertThat(seen.get("with lines")).isGreaterThan(SCORES * 9 / 10);
        assertThat(seen.get("valid")).isGreaterThan(SCORES / 2);
        assertThat(features).containsOnlyKeys(Feature.values());
        assertThat(features.values()).allSatisfy(count -> assertThat(count).isGreaterThan(SCORES / 50));
    }

    private static Kept check(long seed, GeneratedScore score, Packing packing) {
        String name = "seed " + seed + ", " + packing + ", " + score.features();
        try {
            Kept kept = Kept.check(FRETGLOSS, name, packing.pack(score.text(), seed));
            assertThat(kept.isValid() || !score.isInSchema()).as(name).isTrue();
            return kept;
        } catch (ScoreException e) {
            throw new AssertionError(name, e);
        }
    }

    @Test
    @DisplayName("the made-up scores are as different as the properties need")
    void areVaried() {
        String all = String.join(
                "",
                IntStream.range(0, 600)
                        .mapToObj(seed -> GeneratedScore.of(seed).text())
                        .toList());

        assertThat(all)
                .containsPattern("<kind[^>]*>other</kind>")
                .contains("score-timewise", "<grace", "<chord", "<tuplet", "<tied", "<repeat", "<harmony", "<lyric")
                .contains("<release", "<pre-bend", "<with-bar", "<hammer-on", "<pull-off", "<slide", "<wavy-line")
                .contains(
                        "<staves",
                        "<sign>TAB</sign>",
                        "implicit",
                        "<play",
                        "<identification/>",
                        "<miscellaneous/>",
                        "<m:note")
                .contains(
                        "<forward",
                        "<cue",
                        "<unpitched",
                        "<notehead",
                        "<tap",
                        "<multiple-rest",
                        "<ending",
                        "<staff-tuning")
                .contains("<capo", "<transpose", "<clef-octave-change", "<frame", "<degree", "<bass", "<offset")
                .contains("<glow", " glow=", "wobbly", "somewhat-blue", "print-object=\"no\"", "measure=\"yes\"")
                .contains("<!DOCTYPE", "<!-- <note>", "<?keep", "CDATA", "&#", "&amp;", "\r\n", "\t<", "\r  <");
    }
}
