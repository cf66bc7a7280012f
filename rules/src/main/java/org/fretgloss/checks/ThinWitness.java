package org.fretgloss.checks;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.pitch.Scale;
import org.fretgloss.solo.Note;

/**
 * Notes on which a larger scale may hang: it is believed once its further degrees sound in three bars, and a slip may be
 * what sounds in the third. So few are asked about, whatever the length of a solo.
 */
final class ThinWitness {

    /** With more bars that speak for the scale, it does not hang on one. */
    private static final int FEW_BARS = 3;

    private ThinWitness() {}

    /** Each the only one of its bar, outside the chord and the pentatonic at the heart of the home scale. */
    static Stream<Note> of(Analysis analysis) {
        Map<Integer, List<Note>> byBar = analysis.solo().notes().stream()
                .filter(note -> isFurtherDegree(analysis, note))
                .collect(Collectors.groupingBy(note -> note.bar().index()));
        return byBar.size() > FEW_BARS
                ? Stream.of()
                : byBar.values().stream().filter(notes -> notes.size() == 1).flatMap(List::stream);
    }

    private static boolean isFurtherDegree(Analysis analysis, Note note) {
        Scale scale = analysis.homeAt(note).scale().scale();
        int degree = analysis.degreeOf(note).chroma();
        return note.isPitched()
                && scale.contains(degree)
                && !scale.pentatonic().contains(degree)
                && analysis.chordToneOf(note).isEmpty();
    }
}
