package org.fretgloss.checks;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * How often something sounds in a solo, and how often within two bars of a note. Counted bar by bar, so that a question
 * costs the same however many notes a bar holds.
 *
 * @param <T> what is counted: a pitch class, a place on the neck
 */
final class Soundings<T> {

    /** Bars on either side of a note that are near it. */
    private static final int BARS_NEAR = 2;

    private final Map<T, Integer> all = new HashMap<>();
    private final Map<Integer, Map<T, Integer>> byBar = new HashMap<>();

    private Soundings() {}

    /** Of all pitched notes that have what is counted. */
    static <T> Soundings<T> of(Solo solo, Function<Note, Optional<T>> counted) {
        Soundings<T> soundings = new Soundings<>();
        solo.notes().stream()
                .filter(Note::isPitched)
                .forEach(note -> counted.apply(note).ifPresent(what -> soundings.add(note, what)));
        return soundings;
    }

    private void add(Note note, T what) {
        all.merge(what, 1, Integer::sum);
        byBar.computeIfAbsent(note.bar().index(), bar -> new HashMap<>()).merge(what, 1, Integer::sum);
    }

    int inAll(T what) {
        return all.getOrDefault(what, 0);
    }

    /** In the note's own bar and the two before and after it; the note itself is counted too. */
    int near(Note note, T what) {
        int bar = note.bar().index();
        return IntStream.rangeClosed(bar - BARS_NEAR, bar + BARS_NEAR)
                .map(near -> byBar.getOrDefault(near, Map.of()).getOrDefault(what, 0))
                .sum();
    }
}
