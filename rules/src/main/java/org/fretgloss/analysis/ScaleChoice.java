package org.fretgloss.analysis;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fretgloss.pitch.Scale;
import org.fretgloss.solo.Note;

/**
 * The smallest scale on a tonic that explains a solo. It is the pentatonic of the solo's colour, unless the further
 * degrees of a larger scale, each of them heard and none outweighed by its other form, sound together in three or more
 * bars outside chords that contain them; among several such scales the one that leaves the fewest heard quarter notes
 * outside, the smaller where they are even.
 *
 * <p>A scale that lacks a degree of the pentatonic (harmonic minor lacks the ♭7) is taken only where that degree sounds
 * for less than half as long as the further degree that stands for it.
 */
final class ScaleChoice {

    private static final int BARS = 3;

    /** A degree's natural and altered forms, by semitones above the tonic: 2 and ♭2, 6 and ♭6, 7 and ♭7, ♯4 and 4. */
    private static final Map<Integer, Integer> OTHER_FORM = Map.of(1, 2, 2, 1, 8, 9, 9, 8, 10, 11, 11, 10, 6, 5);

    private final Map<Integer, Set<Integer>> barsOutsideChords = new HashMap<>();
    private final double[] heard = new double[12];

    ScaleChoice(Passage passage, int tonic) {
        for (Note note : passage.notes()) {
            for (Heard pitch : Heard.of(note)) {
                int degree = Math.floorMod(pitch.midi() - tonic, 12);
                heard[degree] += pitch.duration().toDouble();
                boolean inChord = passage.harmony()
                        .chordAt(pitch.start())
                        .map(chord -> chord.contains(pitch.chroma()))
                        .orElse(false);
                if (!inChord) {
                    barsOutsideChords
                            .computeIfAbsent(degree, unused -> new HashSet<>())
                            .add(note.bar().index());
                }
            }
        }
    }

    /**
     * A scale and how sure it is.
     *
     * @param scale the smallest that explains the passage
     * @param rival what would be chosen if a bar or two said otherwise; none where nothing points to it
     * @param confidence 0 to 1, between the two
     */
    record Choice(Scale scale, Optional<Scale> rival, double confidence) {}

    Choice choose(Mode mode) {
        Scale pentatonic = mode.pentatonic();
        List<Scale> larger = Scale.CANDIDATES.stream()
                .filter(scale -> scale.hasMajorThird() == pentatonic.hasMajorThird())
                .filter(scale -> scale != pentatonic && isPossible(scale, pentatonic))
                .sorted(Comparator.comparingDouble(this::heardOutside)
                        .thenComparing(scale -> scale.degrees().size()))
                .toList();
        Optional<Scale> calledFor = larger.stream()
                .filter(scale -> barsFor(scale, pentatonic) >= BARS)
                .filter(scale -> heardOutside(scale) < heardOutside(pentatonic))
                .findFirst();
        Optional<Scale> rival = calledFor.isPresent()
                ? Optional.of(pentatonic)
                : larger.stream().max(Comparator.comparingInt(scale -> barsFor(scale, pentatonic)));
        double likely = calledFor
                .or(() -> rival)
                .map(scale -> likelihood(barsFor(scale, pentatonic)))
                .orElse(0.0);
        return new Choice(calledFor.orElse(pentatonic), rival, calledFor.isPresent() ? likely : 1 - likely);
    }

    /** How likely a larger scale is meant whose further degrees sound in so many bars; even between two and three. */
    private static double likelihood(int bars) {
        double even = BARS - 0.5;
        return bars * bars / (bars * bars + even * even);
    }

    /** Whether each further degree is heard, and none is outweighed by its other form. */
    private boolean isPossible(Scale scale, Scale pentatonic) {
        List<Integer> further = degreesOf(scale, pentatonic);
        return further.stream().allMatch(degree -> heard[degree] > 0 && !isOutweighed(degree, scale))
                && replaces(scale, pentatonic, further);
    }

    /** In how many bars the further degrees sound outside chords that contain them. */
    private int barsFor(Scale scale, Scale pentatonic) {
        Set<Integer> bars = new HashSet<>();
        degreesOf(scale, pentatonic).forEach(degree -> bars.addAll(barsOutsideChords.getOrDefault(degree, Set.of())));
        return bars.size();
    }

    /** Whether the other form of a degree, which the scale lacks, is heard for longer: a ♭7 beside a 7. */
    private boolean isOutweighed(int degree, Scale scale) {
        int other = OTHER_FORM.getOrDefault(degree, degree);
        return !scale.contains(other) && heard[other] > heard[degree];
    }

    private boolean replaces(Scale scale, Scale pentatonic, List<Integer> further) {
        double lost = degreesOf(pentatonic, scale).stream()
                .mapToDouble(degree -> heard[degree])
                .sum();
        double gained = further.stream().mapToDouble(degree -> heard[degree]).sum();
        return lost * 2 <= gained;
    }

    /** The degrees, in semitones, that one scale has and another lacks. */
    private static List<Integer> degreesOf(Scale scale, Scale other) {
        return scale.degrees().stream()
                .map(degree -> degree.chroma())
                .filter(chroma -> !other.contains(chroma))
                .toList();
    }

    private double heardOutside(Scale scale) {
        double sum = 0;
        for (int degree = 0; degree < 12; degree++) {
            sum += scale.contains(degree) ? 0 : heard[degree];
        }
        return sum;
    }
}
