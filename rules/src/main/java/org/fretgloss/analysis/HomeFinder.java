package org.fretgloss.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Scale;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** Finds a passage's home: tonic and mode by what speaks for them, then the smallest scale, then the added notes. */
public final class HomeFinder {

    /**
     * With so few notes their witness is worth half. Fitted on excerpts of 1 to 48 notes from folk melodies, so that a
     * confidence is how often it is right.
     */
    private static final double NOTES_FOR_HALF = 8;

    private final Passage passage;

    private HomeFinder(Passage passage) {
        this.passage = passage;
    }

    /** A tonality and its share in the likelihood of all, 0 to 1. */
    private record Candidate(Tonality tonality, double share) {}

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
        List<Candidate> candidates = likelihoods(score);
        Candidate best = candidates.get(0);
        Candidate next = candidates.get(1);
        ScaleChoice.Choice choice = choose(best.tonality());
        HomeScale home = scaleOf(best.tonality(), choice.scale());
        HomeScale runnerUp = choice.rival()
                .filter(rival -> best.share() * (1 - choice.confidence()) > next.share())
                .map(rival -> scaleOf(best.tonality(), rival))
                .orElseGet(
                        () -> scaleOf(next.tonality(), choose(next.tonality()).scale()));
        double confidence = best.share() * choice.confidence();
        return new Home(home, AddedNotes.of(passage, home), confidence, Optional.of(runnerUp));
    }

    /** The share of each tonality in the likelihood of all, the likeliest first. */
    private List<Candidate> likelihoods(ToDoubleFunction<Tonality> witness) {
        double notes = passage.notes().stream().filter(Note::isPitched).count();
        double trust = notes / (notes + NOTES_FOR_HALF);
        ToDoubleFunction<Tonality> score = tonality -> trust * witness.applyAsDouble(tonality);
        double most = Tonality.ALL.stream().mapToDouble(score).max().orElseThrow();
        double all = Tonality.ALL.stream()
                .mapToDouble(tonality -> Math.exp(score.applyAsDouble(tonality) - most))
                .sum();
        return Tonality.ALL.stream()
                .map(tonality -> new Candidate(tonality, Math.exp(score.applyAsDouble(tonality) - most) / all))
                .sorted(Comparator.comparingDouble(Candidate::share).reversed())
                .toList();
    }

    private ScaleChoice.Choice choose(Tonality tonality) {
        return new ScaleChoice(passage, tonality.tonic()).choose(tonality.mode());
    }

    private HomeScale scaleOf(Tonality tonality, Scale scale) {
        return new HomeScale(spelled(tonality.tonic()), scale);
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
