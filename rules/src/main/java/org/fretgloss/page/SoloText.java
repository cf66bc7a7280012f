package org.fretgloss.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Solo;

/**
 * A solo in a few lines of text, as examples on rule pages and in tests write it.
 *
 * <pre>
 * home: A minor pentatonic        the home; found where it is not given
 * chords: A7 | D7 | %             a progression that begins in the first full bar and repeats to the end
 * form: twelve-bar A              a blues form instead of chords
 * meter: 4/4                      4/4 where it is not given
 * tuning: E4 B3 G3 D3 A2 D2       string 1 first; standard where it is not given
 * capo: 2                         0 where it is not given
 * symbols: A7 | D7                chord symbols of the score, bar by bar
 * title: Gravel Lane              none where it is not given; likewise the tempo
 * tempo: 120                      in quarter notes a minute
 * bars: as written                bars may be shorter or longer than their meter
 * option: from=2                  an option of the rule, may be repeated
 * | 3/7b2:1 r:1 2/8:1/2 h2/10 2/10+1/10:1 | 1/8:3 x2/5:1 |
 * =&gt; bar 1 beat 1: full 4→5
 * =&gt; bar 1 beat 3½: (unwritten)
 * </pre>
 *
 * <p>Durations are exact fractions of a quarter note; without one a note lasts as long as the one before. {@code r} is
 * a rest, {@code -} ties the notes before on, a pitch ({@code C♯4}) may stand for a
 * note without string and fret, {@code +} joins notes struck together, of which one may have a longer
 * duration of its own and sound on: {@code 3/7b2:2+1/5:1 1/8}. The letters before a note and the shorthand for bends
 * stand at {@link Stroke} and {@link BendText}. A first bar shorter than its meter is a pick-up, numbered 0;
 * {@code (3/4)} at the start of a bar changes the meter. Notes, rests and tie continuations are counted 1, 2, 3 ... as
 * the elements of a document.
 *
 * @param solo the solo that is written there
 * @param given what is said about it
 * @param options the rule's options, name to text
 * @param expectations what must be found
 */
public record SoloText(Solo solo, Given given, Map<String, String> options, List<Expectation> expectations) {

    public SoloText {
        options = Map.copyOf(options);
        expectations = List.copyOf(expectations);
    }

    /**
     * Reads the notation.
     *
     * @throws IllegalArgumentException if the text is not written in it, or names a scale, chord or form that is unknown
     */
    public static SoloText parse(String text) {
        List<String> lines =
                text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        List<Expectation> expectations = lines.stream()
                .filter(SoloText::isExpectation)
                .map(Expectation::parse)
                .toList();
        Headers headers = Headers.parse(lines.stream().filter(Headers::isHeader).toList());
        String music = lines.stream()
                .filter(line -> !isExpectation(line) && !Headers.isHeader(line))
                .collect(Collectors.joining("\n"));
        Solo solo = headers.over(SoloBuilder.build(
                MeteredBar.parse(music, headers.meter()),
                headers.tuning(),
                spelling(headers.home()),
                headers.barsMayDiffer()));
        return new SoloText(solo, headers.given(firstFullBar(solo)), headers.options(), expectations);
    }

    private static boolean isExpectation(String line) {
        return line.startsWith("=>");
    }

    /** Against the home where it is stated, else as usual. */
    private static IntFunction<Pitch> spelling(Optional<HomeScale> home) {
        return home.<IntFunction<Pitch>>map(scale -> scale::spell).orElse(Pitch::ofMidi);
    }

    private static String firstFullBar(Solo solo) {
        return solo.bars().stream()
                .filter(bar -> !bar.isPickUp())
                .findFirst()
                .orElse(solo.bars().get(0))
                .number();
    }

    /** What the solo means. */
    public Analysis analysis() {
        return Analysis.of(solo, given);
    }
}
