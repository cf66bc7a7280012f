package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.solo.Bend;

/**
 * A bend written on a grace note belongs to the main note that is played at the same place. A main note without a fret of
 * its own may be written at the bend's peak; then it is struck where the grace note is. Where the two frets differ the bend
 * stays with the grace note.
 */
final class GraceBends {

    private GraceBends() {}

    /**
     * Moves the bends.
     *
     * @param sounding in order of time
     */
    static List<Sounding> moved(List<Sounding> sounding) {
        List<Sounding> moved = new ArrayList<>(sounding);
        Map<String, Integer> waiting = new HashMap<>();
        for (int i = 0; i < moved.size(); i++) {
            Sounding note = moved.get(i);
            String voice =
                    note.stroke().first().voice() + " at " + note.stroke().onset();
            if (note.stroke().grace() && note.bend().isPresent()) {
                waiting.put(voice, i);
            } else if (!note.stroke().grace() && waiting.containsKey(voice)) {
                Sounding grace = moved.get(waiting.get(voice));
                Optional<Sounding> bent = bent(grace, note);
                if (bent.isPresent()) {
                    moved.set(i, bent.get());
                    moved.set(waiting.remove(voice), grace.withBends(List.of()));
                }
            }
        }
        return moved;
    }

    /** The main note with the grace note's bend, if they are one movement of one string. */
    private static Optional<Sounding> bent(Sounding grace, Sounding main) {
        List<BendStep> steps =
                Stream.concat(grace.bends().stream(), main.bends().stream()).toList();
        if (main.at().isPresent()) {
            return main.at().equals(grace.at()) ? Optional.of(main.withBends(steps)) : Optional.empty();
        }
        boolean sameString = main.midi() == grace.midi() || main.midi() == grace.midi() + peak(grace);
        return sameString
                ? Optional.of(main.withSound(grace.pitch(), grace.at()).withBends(steps))
                : Optional.empty();
    }

    private static int peak(Sounding grace) {
        return grace.bend().map(Bend::heardSemitones).orElse(0);
    }
}
