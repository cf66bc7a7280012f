package org.fretgloss.marks;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.OutsideJudge;
import org.fretgloss.analysis.OutsideJudge.Verdict;
import org.fretgloss.analysis.OutsideKind;
import org.fretgloss.pitch.Degree;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;

/** A note that is heard neither in the home scale nor in the chord of the moment. */
final class Outside implements Rule {

    /** Without a chord the note may well be one of its tones. */
    private static final double SHARE_WITHOUT_CHORD = 0.8;

    @Override
    public Line line() {
        return Line.NOTES;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        OutsideJudge judge = new OutsideJudge(analysis);
        Stream.Builder<Finding> findings = Stream.builder();
        Set<Degree> addedInPhrase = new HashSet<>();
        for (Note note : analysis.solo().notes()) {
            if (analysis.startsPhrase(note)) {
                addedInPhrase.clear();
            }
            Degree degree = analysis.degreeOf(note);
            judge.judge(note).ifPresent(verdict -> {
                boolean named = verdict.kind() != OutsideKind.ADDED || addedInPhrase.add(degree);
                findings.add(found(analysis, note, degree, verdict, named));
            });
        }
        return findings.build();
    }

    private static Finding found(Analysis analysis, Note note, Degree degree, Verdict verdict, boolean named) {
        OutsideKind kind = verdict.kind();
        Finding.Builder finding = Finding.at(note)
                .explain(OutsideExplanation.of(analysis, note, verdict))
                .confidence(confidence(kind) * (verdict.chord().isPresent() ? 1 : SHARE_WITHOUT_CHORD))
                .value("degree", degree)
                .value("kind", kind.toString());
        verdict.chord().ifPresent(chord -> finding.value("chord", chord.name()));
        if (kind == OutsideKind.ENCLOSURE) {
            verdict.target().ifPresent(finding::to);
        }
        if (named) {
            finding.text(prefix(kind) + degree);
        }
        return finding.build();
    }

    /** What stands before the degree in the score. */
    private static String prefix(OutsideKind kind) {
        return switch (kind) {
            case ENCLOSURE -> "encl ";
            case APPROACH -> "appr ";
            case PASSING -> "pass ";
            case ADDED, OUTSIDE -> "";
        };
    }

    /** How sure the judgement is where the chord is known. */
    private static double confidence(OutsideKind kind) {
        return switch (kind) {
            case APPROACH, ADDED -> 0.85;
            case ENCLOSURE, PASSING -> 0.8;
            case OUTSIDE -> 0.75;
        };
    }
}
