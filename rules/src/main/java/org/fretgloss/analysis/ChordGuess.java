package org.fretgloss.analysis;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.fretgloss.pitch.ChordKind;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;

/**
 * The chord that an accompaniment most likely plays over a stretch, told by how long each pitch class sounds and by the
 * lowest note.
 *
 * <p>Every usual chord on every root is held against the stretch. What sounds on its tones speaks for it, what sounds
 * besides against it, and so does a tone that never sounds: the third most, the fifth least, which players leave out. A
 * root in the bass speaks for its chord, and of two that fit alike the one with fewer tones wins. Common practice, no
 * source; the weights were set by hand.
 *
 * @param chord the likeliest chord
 * @param confidence 0 to 1: how far it leads before the next chord that differs in more than a colour tone
 */
public record ChordGuess(ChordSymbol chord, double confidence) {

    /** The kinds that a guess may name, those with fewer tones first. */
    private static final List<ChordKind> KINDS = List.of(
            ChordKind.MAJOR,
            ChordKind.MINOR,
            ChordKind.DIMINISHED,
            ChordKind.AUGMENTED,
            ChordKind.SUSPENDED_FOURTH,
            ChordKind.SUSPENDED_SECOND,
            ChordKind.DOMINANT,
            ChordKind.MINOR_SEVENTH,
            ChordKind.MAJOR_SEVENTH,
            ChordKind.MAJOR_SIXTH,
            ChordKind.MINOR_SIXTH,
            ChordKind.HALF_DIMINISHED,
            ChordKind.DIMINISHED_SEVENTH,
            ChordKind.DOMINANT_NINTH,
            ChordKind.MINOR_NINTH,
            ChordKind.MAJOR_NINTH);

    /** What a tone that never sounds takes away: a fifth, and any other. */
    private static final double NO_FIFTH = 0.1;

    private static final double NO_TONE = 0.3;

    /** What sounds outside the chord takes away this much for what it shares of the time. */
    private static final double FOREIGN = 1.5;

    /** What another bass than the root takes away. */
    private static final double OTHER_BASS = 0.25;

    /** What each tone beyond three takes away. */
    private static final double MANY_TONES = 0.02;

    /** A share of the time below which a pitch class is a slip or a passing note. */
    private static final double HEARD = 0.03;

    /** How fast confidence grows with the lead. */
    private static final double STEEPNESS = 8;

    /** Fewer different notes are no chord. */
    private static final int FEWEST_NOTES = 3;

    private static final int CHROMAS = 12;

    /** Every chord that a guess may name, in the order in which it is preferred. */
    private static final List<Template> TEMPLATES = KINDS.stream()
            .flatMap(kind -> IntStream.range(0, CHROMAS)
                    .mapToObj(root -> Template.of(ChordSymbol.of(PitchClass.usual(root), kind))))
            .toList();

    private record Candidate(Template template, double score) {}

    /**
     * A chord, laid out so that many stretches can be held against it.
     *
     * @param tones by chroma, whether it is a tone of the chord
     * @param fifths by chroma, whether it is the chord's fifth
     */
    private record Template(
            ChordSymbol chord, BitSet tones, BitSet fifths, boolean hasMajorThird, boolean hasMinorThird) {

        static Template of(ChordSymbol chord) {
            BitSet tones = new BitSet(CHROMAS);
            BitSet fifths = new BitSet(CHROMAS);
            for (Degree tone : chord.tones()) {
                int chroma = (chord.root().chroma() + tone.chroma()) % CHROMAS;
                tones.set(chroma);
                fifths.set(chroma, tone.number() == 5);
            }
            return new Template(chord, tones, fifths, chord.hasMajorThird(), chord.hasMinorThird());
        }

        double score(double[] shares, OptionalInt bass) {
            int root = chord.root().chroma();
            double score = bass.isPresent() && bass.getAsInt() != root ? -OTHER_BASS : 0;
            for (int chroma = 0; chroma < CHROMAS; chroma++) {
                score += shares[chroma] * (tones.get(chroma) ? 1 : -FOREIGN);
                if (tones.get(chroma) && shares[chroma] < HEARD) {
                    score -= fifths.get(chroma) ? NO_FIFTH : NO_TONE;
                }
            }
            return score - MANY_TONES * (tones.cardinality() - FEWEST_NOTES);
        }

        /** On one root with the same third: A7 and A9 are one harmony to a soloist. */
        boolean isRelated(Template other) {
            return chord.root().equals(other.chord.root())
                    && hasMajorThird == other.hasMajorThird
                    && hasMinorThird == other.hasMinorThird;
        }
    }

    /**
     * Names the chord of a stretch.
     *
     * @param durations by chroma, twelve: how long it sounds, in any unit; notes that sound together each count
     * @param bass the chroma of the lowest note
     * @return nothing where fewer than three different notes sound: a lone line or a fifth names no chord
     */
    public static Optional<ChordGuess> of(List<Double> durations, OptionalInt bass) {
        double total = durations.stream().mapToDouble(Double::doubleValue).sum();
        double[] shares = durations.stream()
                .mapToDouble(duration -> total > 0 ? duration / total : 0)
                .toArray();
        if (Arrays.stream(shares).filter(share -> share >= HEARD).count() < FEWEST_NOTES) {
            return Optional.empty();
        }
        List<Candidate> candidates = TEMPLATES.stream()
                .map(template -> new Candidate(template, template.score(shares, bass)))
                .sorted(Comparator.comparingDouble(Candidate::score).reversed())
                .toList();
        Candidate best = candidates.get(0);
        double next = candidates.stream()
                .filter(candidate -> !candidate.template().isRelated(best.template()))
                .mapToDouble(Candidate::score)
                .findFirst()
                .orElse(0);
        double lead = 1 / (1 + Math.exp(-STEEPNESS * (best.score() - next)));
        return Optional.of(new ChordGuess(best.template().chord(), lead * Math.max(0, Math.min(1, best.score()))));
    }
}
