package org.fretgloss.marks;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Stretch;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;

/** A run of notes that spells out the chord of the moment. */
final class Outline implements Rule {

    private static final int DEGREES_WRITTEN = 4;

    /** Over the home chord of a major home every lick holds the triad; only from so many notes on is it worth a text. */
    private static final int NOTES_AT_HOME = 4;

    @Override
    public Line line() {
        return Line.OUTLINE;
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        return Stretch.of(analysis).stream()
                .flatMap(stretch -> new OutlineFinder(stretch).find(run -> holds(analysis, run)).stream())
                .map(run -> found(analysis, run));
    }

    private static boolean holds(Analysis analysis, OutlineRun run) {
        HomeScale home = analysis.homeAt(run.first()).scale();
        return run.outlines(home.tonic(), home.scale().pentatonic());
    }

    private static Finding found(Analysis analysis, OutlineRun run) {
        List<Degree> degrees = run.degrees();
        Finding.Builder finding = Finding.at(run.first())
                .to(run.last())
                .explain(explanation(analysis, run))
                .confidence(confidence(run))
                .value("chord", run.chord().name())
                .value("degrees", degrees.stream().map(Degree::toString).toList());
        if (degrees.size() >= NOTES_AT_HOME
                || !isHomeOfMajor(analysis.homeAt(run.first()).scale(), run.chord())) {
            finding.text(run.chord() + ": " + shortened(degrees));
        }
        return finding.build();
    }

    private static boolean isHomeOfMajor(HomeScale home, ChordSymbol chord) {
        return home.scale().hasMajorThird()
                && chord.hasMajorThird()
                && chord.root().chroma() == home.tonic().chroma();
    }

    private static String shortened(List<Degree> degrees) {
        String written = joined(degrees.subList(0, Math.min(DEGREES_WRITTEN, degrees.size())));
        return degrees.size() > DEGREES_WRITTEN ? written + " …" : written;
    }

    private static String joined(List<Degree> degrees) {
        return degrees.stream().map(Degree::toString).collect(Collectors.joining(" "));
    }

    /** Three tones may fall together by chance, more of them hardly; a passing note loosens the run. */
    private static double confidence(OutlineRun run) {
        double byLength = Math.min(0.95, 0.8 + 0.05 * (run.degrees().size() - 3));
        return run.passingNote().isPresent() ? byLength - 0.1 : byLength;
    }

    private static String explanation(Analysis analysis, OutlineRun run) {
        String notes = run.degrees().stream()
                .map(degree -> run.chord().root().plus(degree).toString())
                .collect(Collectors.joining(" "));
        String passing = run.passingNote()
                .map(note -> " " + analysis.spell(note).name() + " only passes between them.")
                .orElse("");
        return Places.inSolo(analysis, run.first()) + notes + " spell out " + run.chord() + ", its "
                + joined(run.degrees()) + "." + passing;
    }
}
