package org.fretgloss.analysis;

import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;

/**
 * How one bar speaks for each home: 0 where it fits perfectly or says nothing, the further below 0 the worse it fits. A
 * full bar of notes speaks in logarithms of likelihood, its chords and a change of signature a little on top.
 */
final class BarEvidence {

    /** A note on the weakest degree is still this likely beside one on the tonic. */
    private static final double FLOOR = 0.06;

    /** A full bar of notes is worth so many that tell different things. */
    private static final double NOTES_OF_A_BAR = 2.5;

    /** What it costs when a phrase lands on neither tonic nor fifth; on the fifth half of it. */
    private static final double ELSEWHERE = 0.6;

    /** What a bar of chords costs that belong to a home without standing on its tonic, and of chords that do not. */
    private static final double NEAR_CHORD = 0.2;

    private static final double FOREIGN_CHORD = 1;

    private static final double OTHER_SIGNATURE = 0.3;

    private static final int FIFTH = 7;
    private static final List<Integer> BLUES_ROOTS = List.of(0, 5, 7);

    /** By tonality: what the notes say, and what everything says. */
    private final double[] notes = new double[Tonality.ALL.size()];

    private final double[] all = new double[Tonality.ALL.size()];

    /**
     * Hears a bar.
     *
     * @param struck the notes that begin in it
     * @param landings the last notes of the phrases that end in it
     * @param signature the key signature in force, where signatures change in the solo
     */
    BarEvidence(Bar bar, List<Note> struck, List<Note> landings, Harmony harmony, Optional<KeySignature> signature) {
        List<Heard> heard =
                struck.stream().flatMap(note -> Heard.of(note).stream()).toList();
        double sounding =
                heard.stream().mapToDouble(pitch -> pitch.duration().toDouble()).sum();
        double full = Math.max(sounding, bar.length().toDouble());
        Harmony chords = harmony.between(bar.start(), bar.end());
        for (Tonality home : Tonality.ALL) {
            double ofNotes = heard.stream()
                    .mapToDouble(pitch -> NOTES_OF_A_BAR * pitch.duration().toDouble() / full * likelihood(home, pitch))
                    .sum();
            double elsewhere = landings.stream()
                    .mapToDouble(landing -> elsewhere(home.degreeOf(landing.heardMidi())))
                    .sum();
            double otherSignature = signature
                    .filter(key -> !home.isPrintedBy(key.fifths()))
                    .map(key -> OTHER_SIGNATURE)
                    .orElse(0.0);
            notes[home.index()] = ofNotes;
            all[home.index()] = ofNotes - elsewhere - distance(chords, bar, home) - otherSignature;
        }
    }

    double ofNotes(Tonality home) {
        return notes[home.index()];
    }

    double of(Tonality home) {
        return all[home.index()];
    }

    private static double likelihood(Tonality home, Heard pitch) {
        double weight = DegreeWeights.OF_LEAD_PLAYING.of(home.mode(), home.degreeOf(pitch.midi()));
        return Math.log((weight + FLOOR) / (1 + FLOOR));
    }

    private static double elsewhere(int degree) {
        return degree == 0 ? 0 : degree == FIFTH ? ELSEWHERE / 2 : ELSEWHERE;
    }

    private static double distance(Harmony harmony, Bar bar, Tonality home) {
        double sum = 0;
        for (ChordSpan span : harmony.spans()) {
            double share =
                    span.end().minus(span.start()).dividedBy(bar.length()).toDouble();
            sum += share * span.chord().map(chord -> distance(chord, home)).orElse(0.0);
        }
        return sum;
    }

    private static double distance(ChordSymbol chord, Tonality home) {
        int root = home.degreeOf(chord.root().chroma());
        boolean agrees = home.mode() == Mode.MINOR ? chord.hasMinorThird() : !chord.hasMinorThird();
        boolean blues = chord.isDominant() && BLUES_ROOTS.contains(root);
        if (root == 0 && (agrees || blues)) {
            return 0;
        }
        return blues || home.mode().holds(chord, home.tonic()) ? NEAR_CHORD : FOREIGN_CHORD;
    }
}
