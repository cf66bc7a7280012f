package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.solo.Solo;

/** Finds a solo's home: tonic and colour by what speaks for them, then the smallest scale, then the added notes. */
final class HomeFinder {

    /** How fast confidence grows with the distance to the next likely home. */
    private static final double STEEPNESS = 9;

    private final Solo solo;
    private final Phrasing phrasing;
    private final Harmony harmony;
    private final Optional<Form> form;

    HomeFinder(Solo solo, Phrasing phrasing, Harmony harmony, Optional<Form> form) {
        this.solo = solo;
        this.phrasing = phrasing;
        this.harmony = harmony;
        this.form = form;
    }

    /** A tonic (0 to 11) and a colour, with how much speaks for them. */
    private record Candidate(int tonic, Mode mode, double score) {}

    /** The home that the user states: the scale is given, the notes outside it are counted. */
    Home stated(HomeScale scale) {
        return new Home(scale, AddedNotes.of(solo, scale), 1, Optional.empty());
    }

    Home find() {
        Witnesses witnesses = new Witnesses(solo, phrasing, harmony, form);
        List<Candidate> candidates = new ArrayList<>();
        for (int tonic = 0; tonic < 12; tonic++) {
            for (Mode mode : Mode.values()) {
                candidates.add(new Candidate(tonic, mode, witnesses.score(tonic, mode)));
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::score).reversed());
        Candidate best = candidates.get(0);
        Candidate next = candidates.get(1);
        HomeScale home = scaleOf(best);
        return new Home(
                home, AddedNotes.of(solo, home), confidence(best.score - next.score), Optional.of(scaleOf(next)));
    }

    private HomeScale scaleOf(Candidate candidate) {
        return new HomeScale(
                spelled(candidate), new ScaleChoice(solo, harmony, candidate.tonic).choose(candidate.mode));
    }

    private static double confidence(double lead) {
        return 1 / (1 + Math.exp(-STEEPNESS * lead));
    }

    /** As the form, a chord or the notes spell it; else as usual. */
    private PitchClass spelled(Candidate candidate) {
        return form.flatMap(laid -> laid.progression().key())
                .filter(key -> key.chroma() == candidate.tonic)
                .or(() -> harmony.spans().stream()
                        .flatMap(span -> span.chord().stream())
                        .map(chord -> chord.root())
                        .filter(root -> root.chroma() == candidate.tonic)
                        .findFirst())
                .or(() -> solo.notes().stream()
                        .map(note -> note.pitch().name())
                        .filter(name -> name.chroma() == candidate.tonic && Math.abs(name.alteration()) <= 1)
                        .findFirst())
                .orElseGet(() -> PitchClass.usual(candidate.tonic));
    }
}
