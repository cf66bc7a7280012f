package org.fretgloss.analysis;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A tonic and a mode, before the scale is chosen.
 *
 * @param tonic as a chroma, 0 to 11
 * @param mode minor or major
 */
record Tonality(int tonic, Mode mode) {

    /** All there are; each stands at the place that its {@link #index} says. */
    static final List<Tonality> ALL = Stream.of(Mode.values())
            .flatMap(mode -> IntStream.range(0, 12).mapToObj(tonic -> new Tonality(tonic, mode)))
            .toList();

    int index() {
        return (mode == Mode.MINOR ? 0 : 12) + tonic;
    }

    /** Semitones from the tonic up to a note, 0 to 11. */
    int degreeOf(int midi) {
        return Math.floorMod(midi - tonic, 12);
    }

    /** The tonic of the major scale that a signature prints, or for minor its relative's. */
    boolean isPrintedBy(int fifths) {
        int major = Math.floorMod(7 * fifths, 12);
        return tonic == (mode == Mode.MAJOR ? major : (major + 9) % 12);
    }
}
