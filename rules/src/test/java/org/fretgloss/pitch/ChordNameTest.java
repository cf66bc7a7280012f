package org.fretgloss.pitch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChordNameTest {

    /** What the names mean to players: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    A       | A        | 1 3 5
                    Amaj    | A        | 1 3 5
                    AM      | A        | 1 3 5
                    Am      | Am       | 1 ♭3 5
                    A-      | Am       | 1 ♭3 5
                    Amin    | Am       | 1 ♭3 5
                    A7      | A7       | 1 3 5 ♭7
                    Am7     | Am7      | 1 ♭3 5 ♭7
                    A-7     | Am7      | 1 ♭3 5 ♭7
                    AMin7   | Am7      | 1 ♭3 5 ♭7
                    Amaj7   | Amaj7    | 1 3 5 7
                    AM7     | Amaj7    | 1 3 5 7
                    AMA7    | Amaj7    | 1 3 5 7
                    AΔ7     | Amaj7    | 1 3 5 7
                    D7#9    | D7♯9     | 1 3 5 ♭7 ♯9
                    D7(♯9)  | D7♯9     | 1 3 5 ♭7 ♯9
                    D7+9    | D7♯9     | 1 3 5 ♭7 ♯9
                    D7-9    | D7♭9     | 1 3 5 ♭7 ♭9
                    D7b5    | D7♭5     | 1 3 ♭5 ♭7
                    D7b5#9  | D7♭5♯9   | 1 3 ♭5 ♭7 ♯9
                    D7(b9,b13) | D7♭9♭13 | 1 3 5 ♭7 ♭9 ♭13
                    D13b9   | D13♭9    | 1 3 5 ♭7 ♭9 11 13
                    D7alt   | D7alt    | 1 3 ♭5 ♯5 ♭7 ♭9 ♯9
                    Dalt    | D7alt    | 1 3 ♭5 ♯5 ♭7 ♭9 ♯9
                    Daug7   | D7♯5     | 1 3 ♯5 ♭7
                    D+7     | D7♯5     | 1 3 ♯5 ♭7
                    D7#5    | D7♯5     | 1 3 ♯5 ♭7
                    D9      | D9       | 1 3 5 ♭7 9
                    D7(9)   | D9       | 1 3 5 ♭7 9
                    D7(13)  | D7add13  | 1 3 5 ♭7 13
                    D13     | D13      | 1 3 5 ♭7 9 11 13
                    Dmaj7#11 | Dmaj7♯11 | 1 3 5 7 ♯11
                    E7sus4  | E7sus4   | 1 4 5 ♭7
                    E7sus   | E7sus4   | 1 4 5 ♭7
                    E9sus4  | E9sus4   | 1 4 5 ♭7 9
                    Esus    | Esus4    | 1 4 5
                    Esus2   | Esus2    | 1 2 5
                    G6      | G6       | 1 3 5 6
                    G6/9    | G6/9     | 1 3 5 6 9
                    G69     | G6/9     | 1 3 5 6 9
                    Gm6     | Gm6      | 1 ♭3 5 6
                    Cadd9   | Cadd9    | 1 3 5 9
                    C(add9) | Cadd9    | 1 3 5 9
                    Cmadd9  | Cmadd9   | 1 ♭3 5 9
                    Cadd♯11 | Cadd♯11  | 1 3 5 ♯11
                    C(b5)   | C(♭5)    | 1 3 ♭5
                    Dm(maj7) | Dm(maj7) | 1 ♭3 5 7
                    DmM7    | Dm(maj7) | 1 ♭3 5 7
                    Dmmaj9  | Dm(maj9) | 1 ♭3 5 7 9
                    C+      | Caug     | 1 3 ♯5
                    Caug    | Caug     | 1 3 ♯5
                    C°7     | Cdim7    | 1 ♭3 ♭5 ♭♭7
                    Co7     | Cdim7    | 1 ♭3 ♭5 ♭♭7
                    Cdim    | Cdim     | 1 ♭3 ♭5
                    C°      | Cdim     | 1 ♭3 ♭5
                    Bø      | Bm7♭5    | 1 ♭3 ♭5 ♭7
                    Bø7     | Bm7♭5    | 1 ♭3 ♭5 ♭7
                    F♯m7b5  | F♯m7♭5   | 1 ♭3 ♭5 ♭7
                    Fx°7    | F♯♯dim7  | 1 ♭3 ♭5 ♭♭7
                    Dx7     | D♯♯7     | 1 3 5 ♭7
                    A5      | A5       | 1 5
                    Ab5     | A♭5      | 1 5
                    Bb      | B♭       | 1 3 5
                    Bbm     | B♭m      | 1 ♭3 5
                    Cno3    | C5       | 1 5
                    A7no5   | A7no5    | 1 3 ♭7
                    A7omit3 | A7no3    | 1 5 ♭7
                    """)
    void readsWhatPlayersType(String typed, String name, String tones) {
        ChordSymbol chord = ChordName.parse(typed);
        assertThat(chord.name()).isEqualTo(name);
        assertThat(written(chord)).isEqualTo(tones);
        assertThat(chord.bass()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Bbmaj7/D, B♭maj7/D, D", "G6/9/B, G6/9/B, B", "Am/F#, Am/F♯, F♯", "D7/Ab, D7/A♭, A♭"})
    void readsTheBass(String typed, String name, String bass) {
        ChordSymbol chord = ChordName.parse(typed);
        assertThat(chord.name()).isEqualTo(name);
        assertThat(chord.bass()).contains(PitchClass.parse(bass));
    }

    @Test
    void theRootInTheBassIsNoOtherBass() {
        assertThat(ChordName.parse("A7/A")).isEqualTo(ChordName.parse("A7"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    H7     | 'H7' is no chord: a chord begins with the capital letter of its root, A to G
                    am     | 'am' is no chord: a chord begins with the capital letter of its root, A to G
                    Am7x   | 'Am7x' is no chord: 'x' is not understood
                    A8     | 'A8' is no chord: '8' is not understood
                    A7b5foo | 'A7b5foo' is no chord: 'foo' is not understood
                    Am5    | 'Am5' is no chord: 'm5' is not understood
                    A7/H   | 'A7/H' is no chord: '/H' is not understood
                    Cno1no3 | 'Cno1no3' is no chord: hardly a tone is left
                    """)
    void saysWhatIsNotUnderstood(String typed, String message) {
        assertThatThrownBy(() -> ChordName.parse(typed))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "|", "/", "%", "N.C.", "♭", "A7/", "A 7 D7"})
    void refusesWhatIsNoName(String typed) {
        assertThatThrownBy(() -> ChordName.parse(typed)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyNameWeGiveIsReadBackAsTheSameChord() {
        Seeded any = new Seeded(11);
        for (int i = 0; i < 5_000; i++) {
            anyChord(any)
                    .ifPresent(
                            chord -> assertThat(ChordName.parse(chord.name())).isEqualTo(chord));
        }
    }

    private static Optional<ChordSymbol> anyChord(Seeded any) {
        List<DegreeChange> changes =
                Stream.generate(() -> anyChange(any)).limit(any.between(0, 3)).toList();
        return ChordSymbol.of(
                any.note(),
                any.of(List.of(ChordKind.values())),
                changes,
                any.once(3) ? Optional.of(any.note()) : Optional.empty());
    }

    private static DegreeChange anyChange(Seeded any) {
        DegreeChange.Type type = any.of(List.of(DegreeChange.Type.values()));
        boolean rootless = type == DegreeChange.Type.SUBTRACT && any.once(4);
        return new DegreeChange(type, rootless ? 1 : any.of(List.of(2, 3, 4, 5, 6, 7, 9, 11, 13)), any.between(-1, 1));
    }

    private static String written(ChordSymbol chord) {
        return chord.tones().stream().map(Degree::toString).collect(Collectors.joining(" "));
    }
}
