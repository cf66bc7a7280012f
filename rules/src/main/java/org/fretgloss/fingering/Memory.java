package org.fretgloss.fingering;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a hand remembers when it comes to an onset.
 *
 * @param samePitches how it took the same pitches last time
 * @param chordBefore how it took the chord before, if that has as many notes
 * @param strings by note of the onset: the string of the same pitch a moment ago, or {@link Grip#NO_STRING}
 */
record Memory(Optional<Grip> samePitches, Optional<Grip> chordBefore, List<Integer> strings) {

    Memory {
        strings = List.copyOf(strings);
    }

    /**
     * What a hand remembers.
     *
     * @param settled grips of onsets so long ago that they stand, by pitches
     */
    static Memory of(Hand hand, Onset onset, List<Onset> onsets, Map<List<Integer>, Grip> settled) {
        return new Memory(
                samePitches(hand, onset, settled),
                onset.chordBefore() == Onset.NONE
                        ? Optional.empty()
                        : Optional.of(hand.ago(onset.index() - 1 - onset.chordBefore())
                                .grip()),
                strings(hand, onset, onsets));
    }

    private static Optional<Grip> samePitches(Hand hand, Onset onset, Map<List<Integer>, Grip> settled) {
        int ago = onset.index() - 1 - onset.samePitches();
        if (onset.samePitches() != Onset.NONE && ago < HandFinder.SETTLING) {
            return Optional.of(hand.ago(ago).grip());
        }
        return Optional.ofNullable(settled.get(onset.pitches()));
    }

    private static List<Integer> strings(Hand hand, Onset onset, List<Onset> onsets) {
        return IntStream.range(0, onset.size())
                .mapToObj(note -> {
                    int last = onset.samePitch().get(note);
                    return last == Onset.NONE
                            ? Grip.NO_STRING
                            : hand.ago(onset.index() - 1 - last)
                                    .grip()
                                    .string(onsets.get(last)
                                            .noteOf(onset.pitches().get(note)));
                })
                .toList();
    }
}
