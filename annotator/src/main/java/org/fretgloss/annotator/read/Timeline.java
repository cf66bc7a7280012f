package org.fretgloss.annotator.read;

import java.util.List;
import java.util.stream.Stream;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Sound;

/**
 * A part laid out in time: its bars, and everything that stands in them in the order of the document.
 *
 * @param source the part
 * @param measures one for each bar
 * @param notes notes and rests
 * @param harmonies chord symbols
 * @param directions words, metronome marks and the like
 * @param sounds instructions for playing back that stand by themselves
 * @param attributes clefs, tunings and the like
 */
record Timeline(
        PartSource source,
        List<Measured> measures,
        List<PlacedNote> notes,
        List<Placed<Harmony>> harmonies,
        List<Placed<Direction>> directions,
        List<Placed<Sound>> sounds,
        List<Placed<Attributes>> attributes) {

    Timeline {
        measures = List.copyOf(measures);
        notes = List.copyOf(notes);
        harmonies = List.copyOf(harmonies);
        directions = List.copyOf(directions);
        sounds = List.copyOf(sounds);
        attributes = List.copyOf(attributes);
    }

    /** This part with another that shows the same music as tablature: chord symbols that stand in both count once. */
    Timeline withTablature(Timeline tablature) {
        return new Timeline(
                source,
                measures,
                both(notes, tablature.notes),
                harmonies.isEmpty() ? tablature.harmonies : harmonies,
                both(directions, tablature.directions),
                both(sounds, tablature.sounds),
                attributes);
    }

    private static <T> List<T> both(List<T> first, List<T> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }
}
