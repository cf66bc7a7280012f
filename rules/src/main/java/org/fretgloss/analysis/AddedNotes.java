package org.fretgloss.analysis;

import java.util.List;
import java.util.stream.IntStream;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Solo;

/** Counts the heard pitch classes outside a home scale; grace notes and dead notes apart. */
final class AddedNotes {

    private AddedNotes() {}

    /** In rising order of degree. */
    static List<AddedNote> of(Solo solo, HomeScale home) {
        int[] count = new int[12];
        int[] bent = new int[12];
        solo.notes().stream().flatMap(note -> Heard.of(note).stream()).forEach(heard -> {
            int degree = Math.floorMod(heard.midi() - home.tonic().chroma(), 12);
            count[degree]++;
            bent[degree] += heard.bent() ? 1 : 0;
        });
        return IntStream.range(0, 12)
                .filter(degree -> count[degree] > 0 && !home.scale().contains(degree))
                .mapToObj(semitones -> {
                    Degree degree = Degree.named(semitones);
                    return new AddedNote(degree, home.tonic().plus(degree), count[semitones], bent[semitones]);
                })
                .toList();
    }
}
