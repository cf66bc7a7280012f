package org.fretgloss.analysis;

import java.util.List;
import org.fretgloss.solo.Note;

/** How a passage's sounding time is shared among the pitch classes. */
final class PitchShares {

    private static final int MINOR_THIRD = 3;
    private static final int MAJOR_THIRD = 4;

    /** By chroma; what a half bend reaches is kept apart, by the fretted chroma. */
    private final double[] plain = new double[12];

    private final double[] halfBent = new double[12];
    private final double[] unbent = new double[12];

    PitchShares(List<Note> notes) {
        double total = 0;
        for (Note note : notes) {
            for (Heard heard : Heard.of(note)) {
                double length = heard.duration().toDouble();
                boolean half = heard.bent() && heard.midi() == note.midi() + 1;
                (half ? halfBent : plain)[Math.floorMod(half ? note.midi() : heard.midi(), 12)] += length;
                unbent[heard.chroma()] += heard.bent() ? 0 : length;
                total += length;
            }
        }
        for (int chroma = 0; chroma < 12 && total > 0; chroma++) {
            plain[chroma] /= total;
            halfBent[chroma] /= total;
            unbent[chroma] /= total;
        }
    }

    /**
     * The share of a degree above a tonic, 0 to 1. A ♭3 bent to the 3 is the blues' own third and counts as the ♭3; other
     * bends count by their peak.
     */
    double of(int degree, int tonic) {
        int chroma = (tonic + degree) % 12;
        double leftForPeak = degree == MINOR_THIRD ? halfBent[chroma] : 0;
        double reached = degree == MAJOR_THIRD ? 0 : halfBent[(chroma + 11) % 12];
        return plain[chroma] + leftForPeak + reached;
    }

    /** The share of what no bend reaches. */
    double unbent(int degree, int tonic) {
        return unbent[(tonic + degree) % 12];
    }
}
