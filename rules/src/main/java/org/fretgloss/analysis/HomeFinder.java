package org.fretgloss.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Solo;

/** Finds a passage's home: tonic and mode by what speaks for them, then the smallest scale, then the added notes. */
public final class HomeFinder {

    private final Passage passage;

    private HomeFinder(Passage passage) {
        this.passage = passage;
    }

    /** A tonality and how much speaks for it. */
    private record Candidate(Tonality tonality, double score) {}

    /** The home that the user states: the scale is given, the notes outside it are counted. */
    static Home stated(Passage passage, HomeScale scale) {
        return new Home(scale, AddedNotes.of(passage, scale), 1, Optional.empty());
    }

    static Home find(Passage passage) {
        return new HomeFinder(passage).find(new Witnesses(passage)::together);
    }

    /** The home that pitches and durations speak for: no chords, no phrase endings, no key signature. */
    public static Home byNotesAlone(Solo solo) {
        Passage passage = Passage.ofNotesAlone(solo);
        return new HomeFinder(passage).find(new Witnesses(passage)::ofMelodies);
    }

    private Home find(ToDoubleFunction<Tonality> score) {
        List<Candidate> candidates = Tonality.ALL.stream()
                .map(tonality -> new Candidate(tonality, score.applyAsDouble(tonality)))
                .sorted(Comparator.comparingDouble(Candidate::score).reversed())
                .toList();
        HomeScale home = scaleOf(candidates.get(0).tonality());
        HomeScale runnerUp = scaleOf(candidates.get(1).tonality());
        return new Home(home, AddedNotes.of(passage, home), confidence(candidates), Optional.of(runnerUp));
    }

    /** The share of the best in the likelihood of all. */
    private static double confidence(List<Candidate> candidates) {
        double best = candidates.get(0).score();
        return 1
                / candidates.stream()
                        .mapToDouble(candidate -> Math.exp(candidate.score() - best))
                        .sum();
    }

    private HomeScale scaleOf(Tonality tonality) {
        return new HomeScale(
                spelled(tonality.tonic()), new ScaleChoice(passage, tonality.tonic()).choose(tonality.mode()));
    }

    /** As the form, a chord or the notes spell it; else as usual. */
    private PitchClass spelled(int tonic) {
        return passage.statedKey()
                .filter(key -> key.chroma() == tonic)
                .or(() -> passage.harmony().spans().stream()
                        .flatMap(span -> span.chord().stream())
                        .map(chord -> chord.root())
                        .filter(root -> root.chroma() == tonic)
                        .findFirst())
                .or(() -> passage.notes().stream()
                        .map(note -> note.pitch().name())
                        .filter(name -> name.chroma() == tonic && Math.abs(name.alteration()) <= 1)
                        .findFirst())
                .orElseGet(() -> PitchClass.usual(tonic));
    }
}
