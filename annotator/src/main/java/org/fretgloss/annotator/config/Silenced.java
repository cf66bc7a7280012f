package org.fretgloss.annotator.config;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Solo;

/**
 * Doubts, parted by the teacher's decisions.
 *
 * @param open doubts that nobody has accepted, or whose notes have changed since
 * @param accepted doubts that stand as accepted
 * @param stale entries that fit no doubt: what they spoke of was mended or has changed
 * @param areAnotherScores whether no entry speaks of anything that is in this score
 */
public record Silenced(List<Gloss> open, List<Gloss> accepted, List<Accepted> stale, boolean areAnotherScores) {

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
        return new Silenced(open, accepted, stale, used.isEmpty() && areAnotherScores(solo, corrections));
    }

    /** The same with other doubts open. */
    public Silenced withOpen(List<Gloss> doubts) {
        return new Silenced(doubts, accepted, stale, areAnotherScores);
    }

    /** A single entry whose note is still there may be of this score, and the note mended. */
    private static boolean areAnotherScores(Solo solo, Corrections corrections) {
        List<Accepted> entries = corrections.accepted();
        if (entries.isEmpty()) {
            return false;
        }
        Set<String> digests = solo.notes().stream()
                .map(note -> Surroundings.digest(solo, note))
                .collect(Collectors.toSet());
        return entries.stream().noneMatch(entry -> digests.contains(entry.notes()))
                && (entries.size() > 1 || !entries.get(0).namesPlaceOf(solo));
    }
}
