package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fretgloss.page.SoloText;
import org.junit.jupiter.api.Test;

class PhraseNamesTest {

    private static final String HOME = "home: A minor pentatonic\n";
    private static final double ALIKE = 0.6;

    private static List<PhraseName> names(String music) {
        return PhraseNames.of(SoloText.parse(HOME + music).analysis(), ALIKE);
    }

    private static List<String> letters(String music) {
        return names(music).stream().map(PhraseName::text).toList();
    }

    @Test
    void aRepeatATranspositionAndAShiftKeepTheirLetterWithAPrime() {
        assertThat(letters("""
                | 4/7:1/2 3/5 2/5:1 3/7 r:1 | 4/7:1/2 3/5 2/5:1 3/7 r:1 |
                | 4/9:1/2 3/7 2/7:1 3/9 r:1 | r:3/2 4/7:1/2 3/5 2/5:1 3/7:1/2 | r:4 | 1/8:2 1/5:1/2 2/8 r:1 |""")).containsExactly("A", "A′", "A′", "A′", "B");
    }

    @Test
    void aLineMovedAlongTheScaleIsAVariant() {
        assertThat(letters("""
                | 4/5:1/2 4/7 4/5 3/5 4/7:1 r:1 | 4/7:1/2 3/5 4/7 3/7 3/5:1 r:1 |""")).containsExactly("A", "A′");
    }

    @Test
    void aVariantPointsAtThePhraseItVaries() {
        List<PhraseName> names = names("| 4/7:1/2 3/5 2/5:1 3/7 r:1 | 1/8:2 1/5:1 r:1 | 4/7:1/2 3/5 2/5:1 3/5 r:1 |");
        assertThat(names.get(0).isVariant()).isFalse();
        assertThat(names.get(2).text()).isEqualTo("A′");
        assertThat(names.get(2).letter()).isEqualTo("A");
    }

    @Test
    void oneOrTwoNotesAreAVariantOnlyAsTheyWere() {
        assertThat(letters("| 2/5:1 1/5 r:2 | 2/6:1 1/6 r:2 | 2/5:1 1/5 r:2 | 2/17:1 1/17 r:2 |"))
                .containsExactly("A", "B", "A′", "A′");
    }

    @Test
    void afterZComesAA() {
        String music = IntStream.range(0, 30)
                .mapToObj(i -> "| 6/" + i % 12 + ":1 1/" + (i + i / 12) % 12 + " r:2 ")
                .collect(Collectors.joining("", "", "|"));
        assertThat(letters(music)).contains("A", "Z", "AA", "AD").doesNotHaveDuplicates();
    }

    @Test
    void whatTakesUpTheRhythmAndLandsAtRestAnswers() {
        List<PhraseName> names = names("| 4/7:1/2 3/5 3/7:1 2/5:1/2 3/7 r:1 | 3/7:1/2 2/5 2/8:1 3/5:1/2 4/7 r:1 |");
        assertThat(names).extracting(PhraseName::text).containsExactly("A", "B");
        assertThat(names.get(0).answers()).isEmpty();
        assertThat(names.get(1).answers()).contains("A");
    }

    @Test
    void whatLandsFurtherFromHomeAnswersNothing() {
        assertThat(names("| 3/7:1/2 2/5 2/8:1 3/5:1/2 4/7 r:1 | 4/7:1/2 3/5 3/7:1 2/5:1/2 3/7 r:1 |"))
                .allMatch(name -> name.answers().isEmpty());
    }

    @Test
    void anotherRhythmAnswersNothing() {
        assertThat(names("| 4/7:1/2 3/5 3/7:1 2/5:1/2 3/7 r:1 | 3/7:3/2 2/5:1/4 2/8 4/7:1 r:1 |"))
                .allMatch(name -> name.answers().isEmpty());
    }

    @Test
    void anAnswerIsNoCall() {
        String rhythm = "%s:1/2 3/5 3/7:1 2/5:1/2 %s r:1 | ";
        List<PhraseName> names = names("| " + rhythm.formatted("4/7", "3/7") + rhythm.formatted("2/8", "2/5")
                + rhythm.formatted("1/8", "4/7"));
        assertThat(names.get(1).answers()).contains(names.get(0).letter());
        assertThat(names.get(2).answers()).isEmpty();
    }
}
