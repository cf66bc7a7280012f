package org.fretgloss.analysis;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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

    Scale choose(Mode mode) {
        Scale pentatonic = mode.pentatonic();
        return Scale.CANDIDATES.stream()
                .filter(scale -> scale.hasMajorThird() == pentatonic.hasMajorThird())
                .filter(scale -> scale == pentatonic || isCalledFor(scale, pentatonic))
                .min(Comparator.comparingDouble(this::heardOutside)
                        .thenComparing(scale -> scale.degrees().size()))
                .orElse(pentatonic);
    }

    private boolean isCalledFor(Scale scale, Scale pentatonic) {
        List<Integer> further = degreesOf(scale, pentatonic);
        Set<Integer> bars = new HashSet<>();
        for (int degree : further) {
            if (heard[degree] == 0 || isOutweighed(degree, scale)) {
                return false;
            }
            bars.addAll(barsOutsideChords.getOrDefault(degree, Set.of()));
        }
        return bars.size() >= BARS && replaces(scale, pentatonic, further);
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
