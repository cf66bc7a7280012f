package org.fretgloss.analysis;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Note;

/** Counts the heard pitch classes outside a home scale; grace notes and dead notes apart. */
final class AddedNotes {

    private AddedNotes() {}

    /** In rising order of degree. */
    static List<AddedNote> of(Passage passage, HomeScale home) {
        int[] count = new int[12];
        int[] bent = new int[12];
        passage.heard().forEach(heard -> {
            int degree = Math.floorMod(heard.midi() - home.tonic().chroma(), 12);
            count[degree]++;
            bent[degree] += heard.bent() ? 1 : 0;
        });
        return IntStream.range(0, 12)
                .filter(degree -> count[degree] > 0 && !home.scale().contains(degree))
                .mapToObj(semitones -> {
                    Degree degree = Degree.named(semitones);
                    return new AddedNote(
                            degree, spelled(degree, home.tonic(), passage), count[semitones], bent[semitones]);
                })
                .toList();
    }

    /**
     * A natural degree has one name, whatever is written: the 3 of A is C♯. An altered one goes by two, and the score says
     * which is meant: the note below A in G is G♯ to a player who leans into the A.
     */
    private static PitchClass spelled(Degree degree, PitchClass tonic, Passage passage) {
        PitchClass byDegree = tonic.plus(degree);
        return degree.alteration() == 0
                ? byDegree
                : mostOftenWritten(byDegree.chroma(), passage).orElse(byDegree);
    }

    /** How the notes that sound there without a bend are written; the first written where two are as frequent. */
    private static Optional<PitchClass> mostOftenWritten(int chroma, Passage passage) {
        Map<PitchClass, Integer> counts = new LinkedHashMap<>();
        passage.notes().stream()
                .filter(note -> note.isPitched() && !note.isBentAway())
                .map(Note::pitch)
                .filter(pitch -> pitch.chroma() == chroma)
                .forEach(pitch -> counts.merge(pitch.name(), 1, Integer::sum));
        // The least in reverse order, not the greatest: of equals, min keeps the first and max the last.
        return counts.entrySet().stream()
                .min(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey);
    }
}
