package org.fretgloss.annotator.read;

import java.util.Comparator;
import java.util.List;
import org.fretgloss.analysis.Accompaniment;
import org.fretgloss.analysis.BrokenChords;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;

/**
 * Collects what is played under the solo: all parts that play chords, together or note by note, and with them the
 * basses, whose lowest note tells the root. Other single lines are melodies, which name no chord, and drums have no pitch whatever is written.
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
        List<Player> players = others.stream()
                .filter(other -> other.sounds() && !other.isPercussion())
                .sorted(Comparator.comparing(other -> other.part().source().place()))
                .map(other -> Player.of(other, bars))
                .toList();
        List<Player> playing = players.stream()
                .filter(player -> player.playsChords() || player.profile().isBass())
                .toList();
        if (playing.stream().noneMatch(Player::playsChords)) {
            return Backing.NONE;
        }
        return new Backing(
                playing.stream()
                        .map(player -> player.profile().part().source().label())
                        .toList(),
                new Accompaniment(playing.stream()
                        .flatMap(player -> player.notes().stream())
                        .sorted(IN_TIME)
                        .toList()));
    }

    /**
     * A part and what it plays.
     *
     * @param notes in order of onset
     * @param playsChords together, or note by note; a bass that walks through chords is still a single line
     */
    private record Player(PartProfile profile, List<Accompaniment.Sounding> notes, boolean playsChords) {

        static Player of(PartProfile profile, List<Bar> bars) {
            List<Accompaniment.Sounding> notes = BackingReader.notes(profile.part(), bars);
            boolean playsChords = profile.playsChords() || (!profile.isBass() && BrokenChords.arePlayedBy(notes, bars));
            return new Player(profile, notes, playsChords);
        }
    }

    /** What a part plays; nothing is said about how it is read, since the user did not ask for it. */
    private static List<Accompaniment.Sounding> notes(PartReading part, List<Bar> bars) {
        Notices unread = new Notices();
        Tunings tunings = TuningReader.read(
                part.staves(), part.bars(), part.strokes(), part.source().unread(), unread);
        return PitchReader.read(part.strokes(), part.staves(), tunings, unread).stream()
                .filter(note -> !note.stroke().marks().has(Technique.DEAD))
                .filter(note -> note.stroke().duration().isPositive())
                .filter(note -> note.stroke().first().bar().index() < bars.size())
                .map(note -> sounding(note, bars))
                .sorted(IN_TIME)
                .toList();
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
