package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A wavy line that runs on over further notes of its voice holds for all of them. */
final class Vibrato {

    private Vibrato() {}

    /** Ordinals of the notes that a line runs on over, its last one too; the first says it itself. */
    static Set<Integer> runOn(List<Sounding> notes) {
        Set<Integer> held = new HashSet<>();
        Map<String, List<Integer>> open = new HashMap<>();
        for (Sounding note : notes) {
            Marks marks = note.stroke().marks();
            String voice = note.stroke().first().voice();
            boolean ends = marks.ends().contains(Link.VIBRATO);
            boolean endsAnother = ends && open.containsKey(voice);
            if (endsAnother) {
                held.addAll(open.remove(voice));
                held.add(note.stroke().first().ordinal());
            }
            // Begun and ended on one note it is a line of its own, unless another that was open ends there.
            if (marks.begins().contains(Link.VIBRATO) && (!ends || endsAnother)) {
                open.put(voice, new ArrayList<>());
            } else if (open.containsKey(voice)) {
                open.get(voice).add(note.stroke().first().ordinal());
            }
        }
        return held;
    }
}
