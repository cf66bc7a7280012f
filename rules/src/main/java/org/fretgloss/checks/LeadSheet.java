package org.fretgloss.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Home;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.KeySignature;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** What a reader looks for at the head of a lead sheet and does not find there. */
final class LeadSheet implements Rule {

    /** How sure the home must be to be held against the signature by itself. */
    private static final double SURE = 0.8;

    /** On one tonic natural minor has three flats more than major: C major 0, C minor 3. */
    private static final int FROM_MAJOR_TO_MINOR = 3;

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        List<String> missing = missing(analysis);
        return missing.isEmpty() || analysis.solo().notes().isEmpty()
                ? Stream.of()
                : Stream.of(found(analysis.solo().notes().get(0), missing));
    }

    private static List<String> missing(Analysis analysis) {
        Solo solo = analysis.solo();
        List<String> missing = new ArrayList<>();
        if (solo.title().isBlank()) {
            missing.add("it has no title");
        }
        if (solo.tempos().isEmpty()) {
            missing.add("it has no tempo");
        }
        if (!solo.tuningIsWritten()) {
            missing.add("it does not say how the strings are tuned");
        }
        if (contradicts(solo.bars().get(0).key(), analysis.home())) {
            missing.add("its key signature is not that of "
                    + analysis.home().scale().tonic());
        }
        return missing;
    }

    /** Where the home is not sure, the signature may be that of the next likely one. */
    private static boolean contradicts(KeySignature key, Home home) {
        boolean excused = home.confidence() < SURE
                && home.runnerUp().filter(next -> fits(key, next)).isPresent();
        return !excused && !fits(key, home.scale());
    }

    /** Whether a scale that is usual on the tonic, from major over Mixolydian and Dorian to minor, has the signature. */
    private static boolean fits(KeySignature key, HomeScale scale) {
        int above = scale.tonic().fifths() - key.fifths();
        return above >= 0 && above <= FROM_MAJOR_TO_MINOR;
    }

    private static Finding found(Note first, List<String> missing) {
        return Finding.at(first)
                .doubt(Severity.HINT)
                .explain("The score is no full lead sheet: " + String.join("; ", missing) + ".")
                .value("missing", missing)
                .build();
    }
}
