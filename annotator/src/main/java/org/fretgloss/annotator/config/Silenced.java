package org.fretgloss.annotator.config;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Solo;

/**
 * Doubts, parted by the teacher's decisions.
 *
 * @param open doubts that nobody has accepted, or whose notes have changed since
 * @param accepted doubts that stand as accepted
 * @param stale entries that fit no doubt: what they spoke of was mended or has changed
 */
public record Silenced(List<Gloss> open, List<Gloss> accepted, List<Accepted> stale) {

    public Silenced {
        open = List.copyOf(open);
        accepted = List.copyOf(accepted);
        stale = List.copyOf(stale);
    }

    /**
     * Parts the doubts about a solo.
     *
     * @param asked the ids of the checks that were asked; an entry of another check is not stale
     */
    public static Silenced of(Solo solo, List<Gloss> doubts, Set<String> asked, Corrections corrections) {
        Set<Accepted> entries = new HashSet<>(corrections.accepted());
        Set<Accepted> used = new HashSet<>();
        List<Gloss> open = new ArrayList<>();
        List<Gloss> accepted = new ArrayList<>();
        for (Gloss doubt : doubts) {
            Accepted entry = Accepted.of(solo, doubt);
            if (entries.contains(entry)) {
                used.add(entry);
                accepted.add(doubt);
            } else {
                open.add(doubt);
            }
        }
        List<Accepted> stale = corrections.accepted().stream()
                .filter(entry -> asked.contains(entry.rule()) && !used.contains(entry))
                .toList();
        return new Silenced(open, accepted, stale);
    }
}
