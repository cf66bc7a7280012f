package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.solo.Bend;
import org.fretgloss.time.Fraction;

/**
 * A bend that is written out over several notes is one stroke: the note that is struck, then one at the same fret that is
 * written at the peak or begins with the release. A slur may lead on to a third that is written at the struck pitch again:
 * the release. Where no frets stand a slur must lead to the peak, too. Notes at different frets are never one bend.
 */
final class SplitBends {

    /** Let down all the way, from whatever height. */
    private static final BendStep RELEASED = new BendStep(Fraction.ZERO, BendStep.Kind.RELEASE);

    private final List<Sounding> joined = new ArrayList<>();

    /** Places in the list of the latest note on each string and in each voice. */
    private final Map<String, Integer> latest = new HashMap<>();

    private final Slurs slurs;

    private SplitBends(Slurs slurs) {
        this.slurs = slurs;
    }

    /**
     * Joins the strokes.
     *
     * @param sounding in order of time
     */
    static List<Sounding> joined(List<Sounding> sounding) {
        SplitBends bends = new SplitBends(Slurs.of(sounding));
        sounding.forEach(bends::add);
        return bends.joined;
    }

    private void add(Sounding note) {
        Optional<Integer> before = Optional.ofNullable(latest.get(note.track()));
        Optional<Sounding> whole = before.flatMap(place -> joined(joined.get(place), note));
        int place = whole.isPresent() ? before.orElseThrow() : joined.size();
        if (whole.isPresent()) {
            joined.set(place, whole.get());
        } else {
            joined.add(note);
        }
        latest.put(note.track(), place);
        latest.put(note.voiceTrack(), place);
    }

    /** A bent note together with the note that only goes on with it, if that is what it does. */
    private Optional<Sounding> joined(Sounding bent, Sounding note) {
        Fraction height = endOf(bent);
        boolean slurred = slurs.join(bent, note);
        boolean samePlace = note.at().isPresent() && note.at().equals(bent.at());
        if (!height.isPositive()
                || note.stroke().grace()
                || !bent.stroke().end().equals(note.stroke().onset())
                || !(samePlace || (note.at().isEmpty() && slurred))) {
            return Optional.empty();
        }
        if (beginsWithRelease(note) || isWrittenAt(height, bent, note)) {
            return Optional.of(bent.then(note));
        }
        return slurred && isWrittenAt(Fraction.ZERO, bent, note)
                ? Optional.of(bent.then(note.withBends(List.of(RELEASED))))
                : Optional.empty();
    }

    /** How far the string is still bent when the note ends, in semitones. */
    private static Fraction endOf(Sounding note) {
        return note.bend()
                .map(Bend::heights)
                .map(heights -> heights.get(heights.size() - 1))
                .orElse(Fraction.ZERO);
    }

    private static boolean beginsWithRelease(Sounding note) {
        return !note.bends().isEmpty() && note.bends().get(0).kind() == BendStep.Kind.RELEASE;
    }

    private static boolean isWrittenAt(Fraction height, Sounding bent, Sounding note) {
        return note.bends().isEmpty()
                && Fraction.of(note.writtenMidi() - bent.midi()).equals(height);
    }
}
