package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.time.Fraction;

/** Which notes a slur leads to from the note before them in their voice. */
final class Slurs {

    /** Where a note of a voice stops. */
    private record End(String voice, Fraction moment) {}

    /** Notes of a voice that begin together. */
    private record Chord(String voice, Fraction onset, boolean grace) {

        static Chord of(Stroke stroke) {
            return new Chord(stroke.first().voice(), stroke.onset(), stroke.grace());
        }
    }

    /** By the ordinal of a note's first element, the place in the list of the note that the slur comes from. */
    private final Map<Integer, Integer> origins = new HashMap<>();

    /** By voice, what an open slur has led over so far; counts only if the slur is ended. */
    private final Map<String, Map<Integer, Integer>> open = new HashMap<>();

    private final Map<End, Integer> ends = new HashMap<>();

    private Slurs() {}

    /**
     * Follows the slurs. One that is never ended leads nowhere; of slurs within slurs the innermost counts.
     *
     * @param notes in order of time
     */
    static Slurs of(List<Sounding> notes) {
        Map<Chord, List<Integer>> chords = new LinkedHashMap<>();
        for (int i = 0; i < notes.size(); i++) {
            chords.computeIfAbsent(Chord.of(notes.get(i).stroke()), unseen -> new ArrayList<>())
                    .add(i);
        }
        Slurs slurs = new Slurs();
        chords.forEach((chord, places) -> slurs.follow(chord, places, notes));
        return slurs;
    }

    private void follow(Chord chord, List<Integer> places, List<Sounding> notes) {
        Integer before = ends.get(new End(chord.voice, chord.onset));
        Map<Integer, Integer> led = open.get(chord.voice);
        boolean begins = false;
        boolean stops = false;
        for (int place : places) {
            Stroke stroke = notes.get(place).stroke();
            begins |= stroke.marks().begins().contains(Link.SLUR);
            stops |= stroke.marks().ends().contains(Link.SLUR);
            if (before != null && led != null) {
                led.put(stroke.first().ordinal(), before);
            }
            ends.put(new End(chord.voice, stroke.end()), place);
        }
        if (led != null && stops) {
            origins.putAll(led);
            open.remove(chord.voice);
        }
        if (begins) {
            open.put(chord.voice, new HashMap<>());
        }
    }

    /** Place in the list of the note that a slur leads from to this one, which follows it at once. */
    Optional<Integer> origin(Sounding to) {
        return Optional.ofNullable(origins.get(to.stroke().first().ordinal()));
    }

    /** Whether a slur leads from one note to the other, which follows it at once. */
    boolean join(Sounding from, Sounding to) {
        return origin(to).isPresent()
                && from.stroke().first().voice().equals(to.stroke().first().voice())
                && from.stroke().end().equals(to.stroke().onset());
    }
}
