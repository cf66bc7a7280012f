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
 * written at the peak or begins with the release. Where no frets stand a slur must lead to the note at the peak. Notes at
 * different frets are never one bend.
 */
final class SplitBends {

    private final List<Sounding> joined = new ArrayList<>();

    /** Places in the list of the latest note on each string and in each voice. */
    private final Map<String, Integer> latest = new HashMap<>();

    private SplitBends() {}

    /**
     * Joins the strokes.
     *
     * @param sounding in order of time
     */
    static List<Sounding> joined(List<Sounding> sounding) {
        SplitBends bends = new SplitBends();
        sounding.forEach(bends::add);
        return bends.joined;
    }

    private void add(Sounding note) {
        int place = Optional.ofNullable(latest.get(note.track()))
                .filter(before -> goesOn(joined.get(before), note))
                .orElse(joined.size());
        if (place == joined.size()) {
            joined.add(note);
        } else {
            joined.set(place, joined.get(place).then(note));
        }
        latest.put(note.track(), place);
        latest.put(note.voiceTrack(), place);
    }

    private static boolean goesOn(Sounding bent, Sounding note) {
        Fraction height = endOf(bent);
        boolean samePlace = note.at().isPresent() && note.at().equals(bent.at());
        return height.isPositive()
                && !note.stroke().grace()
                && bent.stroke().end().equals(note.stroke().onset())
                && (samePlace || (note.at().isEmpty() && isSlurred(bent, note)))
                && (beginsWithRelease(note) || isWrittenAt(height, bent, note));
    }

    /** How far the string is still bent when the note ends, in semitones. */
    private static Fraction endOf(Sounding note) {
        return note.bend()
                .map(Bend::heights)
                .map(heights -> heights.get(heights.size() - 1))
                .orElse(Fraction.ZERO);
    }

    private static boolean isSlurred(Sounding bent, Sounding note) {
        return bent.stroke().marks().begins().contains(Link.SLUR)
                && note.stroke().marks().ends().contains(Link.SLUR);
    }

    private static boolean beginsWithRelease(Sounding note) {
        return !note.bends().isEmpty() && note.bends().get(0).kind() == BendStep.Kind.RELEASE;
    }

    private static boolean isWrittenAt(Fraction height, Sounding bent, Sounding note) {
        return note.bends().isEmpty()
                && Fraction.of(note.writtenMidi() - bent.midi()).equals(height);
    }
}
