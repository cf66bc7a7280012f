package org.fretgloss.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.fretgloss.page.SoloText;
import org.fretgloss.pitch.UnknownNameException;
import org.junit.jupiter.api.Test;

/** Invented solos whose home a teacher would not doubt; the expectations follow from the definitions. */
class HomeTest {

    private static Home homeOf(String text) {
        SoloText example = SoloText.parse(text);
        return Analysis.of(example.solo(), example.given()).home();
    }

    @Test
    void aBluesIsAtHomeOnItsIWhateverTheSignatureSays() {
        Home home = homeOf("""
                form: twelve-bar A
                | 4/7:1 3/5 3/7 3/5 | 4/7:2 4/5:1 4/7 | 2/5:1 2/8 1/5 2/8 | 2/5:2 3/7:1 3/5 |
                | 3/7:1 2/5 2/8 3/7 | 3/5:1 4/7 4/5 4/7 | 4/7:4 | r:4 |
                """);
        assertThat(home.scale()).hasToString("A minor pentatonic");
        assertThat(home.added()).isEmpty();
        assertThat(home.confidence()).isGreaterThan(0.5);
    }

    @Test
    void aThirdReachedByABendIsAnAddedNoteAndCountedAsBent() {
        Home home = homeOf("""
                chords: A7
                | 3/5b1:1 3/5b1 4/7:1 2/5 | 3/6:1 4/7:2 4/5:1 | 2/8:1 2/5 3/7 3/5b1 | 4/7:4 |
                """);
        assertThat(home.scale()).hasToString("A minor pentatonic");
        assertThat(home.added()).singleElement().satisfies(note -> {
            assertThat(note.degree()).hasToString("3");
            assertThat(note.pitch()).hasToString("C♯");
            assertThat(note.count()).isEqualTo(4);
            assertThat(note.bent()).isEqualTo(3);
        });
    }

    @Test
    void aReleasedBendIsHeardAtBothItsPitches() {
        Home home = homeOf("""
                home: A minor pentatonic
                | 3/9b2r:1 r:3 |
                """);
        // E bent to F♯ and let down: F♯ is heard once, by a bend; E belongs to the scale.
        assertThat(home.added()).singleElement().satisfies(note -> {
            assertThat(note.degree()).hasToString("6");
            assertThat(note.count()).isEqualTo(1);
            assertThat(note.bent()).isEqualTo(1);
        });
    }

    @Test
    void aBendLetDownHalfwayIsHeardWhereItEnds() {
        // E bent to F♯ and let down to F; the second F♯ is let down by so little that it stays one.
        Home home = homeOf("home: A minor pentatonic\n| 3/9b(0,2,1):1 3/9b(0,2,3/2):1 r:2 |");
        assertThat(home.added())
                .extracting(note -> "%s %d %d".formatted(note.degree(), note.count(), note.bent()))
                .containsExactly("♭6 1 1", "6 2 2");
    }

    @Test
    void aCurlIsHeardAsTheFrettedPitch() {
        assertThat(homeOf("home: A minor pentatonic\n| 3/5b1/2:1 r:3 |").added())
                .isEmpty();
    }

    @Test
    void graceNotesAndDeadNotesAddNothing() {
        assertThat(homeOf("home: A minor pentatonic\n| g3/6 3/7:1 x3/6:1 r:2 |").added())
                .isEmpty();
    }

    @Test
    void majorPentatonicOverMajorChords() {
        Home home = homeOf("""
                chords: G | C | D | G
                | 3/4:1 2/3 2/5 1/3 | 1/5:1 1/3 2/5 2/3 | 3/7:1 2/5:1 3/7 3/4 | 4/5:4 |
                """);
        assertThat(home.scale()).hasToString("G major pentatonic");
    }

    @Test
    void dorianWhereItsFurtherDegreesSoundInThreeBarsOutsideTheChords() {
        // F♯ in bars 1 and 4, C♯ over Em7 in bars 3 and 5; C♯ belongs to A7 and says nothing in bar 2.
        Home home = homeOf("""
                chords: Em7 | A7
                | 4/2:1 4/4 3/2 3/4 | 3/6:1 3/4 4/2:2 | 2/2:1 2/3 3/6 3/4 | 3/2:1 4/4 4/2:2 |
                | 3/6:1 2/2 2/3 3/4 | 4/2:4 |
                """);
        assertThat(home.scale()).hasToString("E dorian");
    }

    @Test
    void twoBarsOfAFurtherDegreeLeaveItAnAddedNote() {
        Home home = homeOf("""
                chords: Em7
                | 4/2:1 4/4 3/2 3/4 | 3/6:1 3/4 4/2:2 | 2/3:1 2/5 3/4 3/2 | 3/2:1 4/5 4/2:2 |
                """);
        assertThat(home.scale()).hasToString("E minor pentatonic");
        assertThat(home.added()).extracting(note -> note.degree().toString()).containsExactly("2", "6");
    }

    @Test
    void withoutChordsOrSignatureTheNotesAndTheirEndingsDecide() {
        Home home = homeOf("""
                | 2/8:1 2/5 3/7 3/5 | 4/7:2 r:2 | 3/5:1 3/7 2/5 3/7 | 3/5:1 4/7:2 r:1 |
                """);
        assertThat(home.scale()).hasToString("A minor pentatonic");
        assertThat(home.runnerUp()).isPresent();
    }

    @Test
    void whatTheUserStatesIsCertain() {
        Home home = homeOf("home: F# phrygian dominant\n| 3/7:4 |");
        assertThat(home.scale()).hasToString("F♯ phrygian dominant");
        assertThat(home.confidence()).isEqualTo(1);
        assertThat(home.runnerUp()).isEmpty();
    }

    @Test
    void anUnknownScaleNamesThoseThereAre() {
        assertThatThrownBy(() -> HomeScale.parse("A doriann"))
                .isInstanceOfSatisfying(
                        UnknownNameException.class, e -> assertThat(e.known()).contains("dorian"));
        assertThatThrownBy(() -> HomeScale.parse("H dorian")).hasMessageContaining("no tonic");
    }

    @Test
    void mixolydianOverItsOwnDominant() {
        // the 4 sounds in four bars outside A7; the ♭7 belongs to the chord and is heard all the same
        Home home = homeOf("""
                chords: A7
                | 3/6:1 3/7 2/5 2/8 | 3/7:1 3/6 2/8 4/7 | 3/6:1 3/7 2/8 2/7 | 3/7:1 3/6 3/4 4/7 |
                """);
        assertThat(home.scale()).hasToString("A mixolydian");
    }

    @Test
    void dorianOverItsOwnFourthChord() {
        // the 2 sounds in four bars outside the chords; the 6 is the 3 of D7
        Home home = homeOf("""
                chords: Am7 | D7
                | 2/5:1 3/4 2/5 4/7 | 3/4:1 2/7 2/5 3/5 | 2/5:1 3/4 2/8 4/7 | 2/7:1 3/4 3/5 4/7 |
                """);
        assertThat(home.scale()).hasToString("A dorian");
    }
}
