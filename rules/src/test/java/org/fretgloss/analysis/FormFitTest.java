package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.page.SoloText;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sums by bar of the progression say the same of each start as going through the whole solo does. */
class FormFitTest {

    private static final String[] CHORDS = {"A7", "D7", "E7", "A7 D7", "N.C."};

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 20})
    void isWhatTheNotesOfTheWholeSoloSay(int length) {
        SplittableRandom random = new SplittableRandom(length);
        Progression progression = Progression.parse(IntStream.range(0, length)
                .mapToObj(i -> CHORDS[random.nextInt(CHORDS.length)])
                .collect(Collectors.joining(" | ")));
        // A pick-up, and notes that are held over the bar line.
        Solo solo = SoloText.parse(IntStream.range(0, 13)
                        .mapToObj(i -> "-:1 4/" + random.nextInt(1, 12) + ":1 3/" + random.nextInt(1, 12) + ":2")
                        .collect(Collectors.joining(" | ", "| 4/7:1 | ", " |")))
                .solo();

        FormFit fit = FormFit.of(solo, progression);

        for (int start = 0; start < solo.bars().size(); start++) {
            Form form = new Form(progression, solo.bars().get(start));
            assertThat(fit.startingAt(start)).isEqualTo(onChords(solo, FormHarmony.of(solo, form)));
        }
    }

    private static Fraction onChords(Solo solo, Harmony harmony) {
        return solo.notes().stream()
                .flatMap(note -> Heard.of(note).stream())
                .flatMap(heard -> harmony.spans().stream()
                        .filter(span -> span.chord()
                                .filter(chord -> chord.contains(heard.chroma()))
                                .isPresent())
                        .map(span ->
                                heard.end().min(span.end()).minus(heard.start().max(span.start()))))
                .filter(Fraction::isPositive)
                .reduce(Fraction.ZERO, Fraction::plus);
    }
}
