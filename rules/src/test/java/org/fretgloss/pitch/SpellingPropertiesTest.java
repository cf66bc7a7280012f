package org.fretgloss.pitch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What holds for every spelled note; notes and degrees are drawn at random, the same in every run. */
class SpellingPropertiesTest {

    private static final int DRAWS = 2000;

    private static void forEachDraw(Consumer<Seeded> property) {
        Seeded seeded = new Seeded(7);
        for (int i = 0; i < DRAWS; i++) {
            property.accept(seeded);
        }
    }

    private static Degree degree(Seeded seeded) {
        return new Degree(seeded.between(1, 7), seeded.between(-1, 1));
    }

    @Test
    void aDegreeAboveATonicIsFoundAgain() {
        forEachDraw(seeded -> {
            PitchClass tonic = seeded.note();
            Degree degree = degree(seeded);
            assertThat(tonic.degreeOf(tonic.plus(degree)))
                    .as("%s of %s", degree, tonic)
                    .isEqualTo(degree);
        });
    }

    @Test
    void aDegreeSoundsItsSemitonesAboveTheTonic() {
        forEachDraw(seeded -> {
            PitchClass tonic = seeded.note();
            Degree degree = degree(seeded);
            assertThat(tonic.semitonesUpTo(tonic.plus(degree)))
                    .as("%s of %s", degree, tonic)
                    .isEqualTo(degree.chroma());
        });
    }

    /** On the line of fifths a degree is a distance, the same from every tonic: so spelling survives transposition. */
    @Test
    void aDegreeIsTheSameDistanceInFifthsFromEveryTonic() {
        PitchClass c = PitchClass.parse("C");
        forEachDraw(seeded -> {
            PitchClass tonic = seeded.note();
            Degree degree = degree(seeded);
            assertThat(tonic.plus(degree).fifths() - tonic.fifths())
                    .as("%s of %s", degree, tonic)
                    .isEqualTo(c.plus(degree).fifths());
        });
    }

    @Test
    void sevenFifthsUpIsASemitoneUpOnOneLetter() {
        forEachDraw(seeded -> {
            PitchClass note = seeded.note();
            assertThat(Math.floorMod(7 * note.fifths(), 12)).as(note.toString()).isEqualTo(note.chroma());
            assertThat(PitchClass.atFifth(note.fifths())).isEqualTo(note);
        });
    }

    @Test
    void aPitchIsReadAsItIsWritten() {
        forEachDraw(seeded -> {
            Pitch pitch = seeded.pitch();
            assertThat(Pitch.parse(pitch.toString())).isEqualTo(pitch);
        });
    }

    @Test
    void aPitchIsFoundAgainFromItsNumberAndName() {
        forEachDraw(seeded -> {
            Pitch pitch = seeded.pitch();
            assertThat(Pitch.spelled(pitch.midi(), pitch.name())).isEqualTo(pitch);
            assertThat(Pitch.ofMidi(pitch.midi()).midi()).isEqualTo(pitch.midi());
            assertThat(pitch.octavesUp(1).midi()).isEqualTo(pitch.midi() + 12);
        });
    }

    @Test
    void everyDegreeIsNamedAndReadAsItIsWritten() {
        for (int semitones = -12; semitones < 24; semitones++) {
            Degree degree = Degree.named(semitones);
            assertThat(degree.chroma()).isEqualTo(Math.floorMod(semitones, 12));
            assertThat(Degree.parse(degree.toString())).isEqualTo(degree);
        }
    }

    @Test
    void anIntervalLeadsFromOnePitchToTheOtherAndBack() {
        forEachDraw(seeded -> {
            Pitch from = seeded.pitch();
            Pitch to = seeded.pitch();
            Interval interval = Interval.between(from, to);
            assertThat(from.plus(interval)).isEqualTo(to);
            assertThat(to.plus(interval.reversed())).isEqualTo(from);
            assertThat(interval.reversed())
                    .isEqualTo(Interval.between(to, from))
                    .hasToString(interval.toString());
        });
    }
}
