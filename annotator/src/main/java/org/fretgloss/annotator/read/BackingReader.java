package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Accompaniment;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * Collects what is played under the solo: all parts that play chords, heard together, and with them the basses, whose lowest
 * note tells the root. Other single lines are melodies, which name no chord, and drums have no pitch whatever is written.
 * Common practice, no source.
 */
final class BackingReader {

    private static final Comparator<Accompaniment.Sounding> IN_TIME =
            Comparator.comparing(Accompaniment.Sounding::start);

    private BackingReader() {}

    /**
     * The backing of a solo.
     *
     * @param bars the solo's bars, on which the other parts' notes are laid
     * @param others all parts but the solo
     */
    static Backing read(List<Bar> bars, List<PartProfile> others) {
        List<PartProfile> pitched =
                others.stream().filter(other -> !other.isPercussion()).toList();
        if (pitched.stream().noneMatch(PartProfile::playsChords)) {
            return Backing.NONE;
        }
        List<PartReading> playing = pitched.stream()
                .filter(other -> other.playsChords() || other.isBass())
                .map(PartProfile::part)
                .sorted(Comparator.comparing(part -> part.source().place()))
                .toList();
        return new Backing(
                playing.stream().map(part -> part.source().label()).toList(),
                new Accompaniment(playing.stream()
                        .flatMap(part -> notes(part, bars))
                        .sorted(IN_TIME)
                        .toList()));
    }

    /** What a part plays; nothing is said about how it is read, since the user did not ask for it. */
    private static Stream<Accompaniment.Sounding> notes(PartReading part, List<Bar> bars) {
        Notices unread = new Notices();
        Tunings tunings = TuningReader.read(part.staves(), part.bars(), part.strokes(), unread);
        return PitchReader.read(part.strokes(), part.staves(), tunings, unread).stream()
                .filter(note -> !note.stroke().marks().has(Technique.DEAD))
                .filter(note -> note.stroke().duration().isPositive())
                .filter(note -> note.stroke().first().bar().index() < bars.size())
                .map(note -> sounding(note, bars));
    }

    /** From its place in its own bar to the same place in the solo's. */
    private static Accompaniment.Sounding sounding(Sounding note, List<Bar> bars) {
        Bar own = note.stroke().first().bar();
        Fraction start =
                bars.get(own.index()).start().plus(note.stroke().onset().minus(own.start()));
        return new Accompaniment.Sounding(
                note.midi(), start, start.plus(note.stroke().duration()));
    }
}
