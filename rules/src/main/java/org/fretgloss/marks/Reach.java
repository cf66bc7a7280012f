package org.fretgloss.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.BoxSpan;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;

/** Notes fretted outside the window of the box in force; an excursion is written at its first note. */
final class Reach implements Rule {

    @Override
    public Line line() {
        return Line.BOX;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return analysis.boxes().spans().stream().flatMap(span -> excursions(analysis, span).stream());
    }

    private static List<Finding> excursions(Analysis analysis, BoxSpan span) {
        List<Finding> findings = new ArrayList<>();
        double confidence = BoxRule.confidence(analysis, span);
        int side = 0;
        for (Note note : span.notes(analysis.solo())) {
            if (!isFretted(note)) {
                continue;
            }
            int frets = analysis.boxes().reachOf(note);
            if (frets != 0) {
                Finding.Builder finding =
                        found(analysis, span.box(), note, frets).confidence(confidence);
                findings.add(Integer.signum(frets) == side ? finding.unwritten().build() : finding.build());
            }
            side = Integer.signum(frets);
        }
        return findings;
    }

    /** Neither open strings nor dead notes take the hand anywhere, and tapped notes are the other hand's. */
    private static boolean isFretted(Note note) {
        return !note.isDead()
                && note.attack() != Attack.TAPPED
                && note.at().filter(at -> !at.isOpen()).isPresent();
    }

    private static Finding.Builder found(Analysis analysis, Box box, Note note, int frets) {
        return Finding.at(note)
                .text("reach %+d".formatted(frets))
                .explain(explanation(analysis, box, note, frets))
                .value("frets", frets);
    }

    private static String explanation(Analysis analysis, Box box, Note note, int frets) {
        StringFret at = note.at().orElseThrow();
        return "At %s string %d fret %d%s lies %d %s %s box %d (frets %d to %d): the hand reaches out of the box."
                .formatted(
                        analysis.placeOf(note),
                        at.string(),
                        at.fret(),
                        analysis.isInferred(note) ? " (inferred)" : "",
                        Math.abs(frets),
                        Math.abs(frets) == 1 ? "fret" : "frets",
                        frets > 0 ? "above" : "below",
                        box.number(),
                        box.lowestFret(),
                        box.highestFret());
    }
}
