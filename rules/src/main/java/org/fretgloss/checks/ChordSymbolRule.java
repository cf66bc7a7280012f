package org.fretgloss.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.ChordSpan;
import org.fretgloss.analysis.Harmony;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/** A chord symbol that every note of two bars fights, or a long stretch before the first. */
final class ChordSymbolRule implements Rule {

    private static final Option<Integer> NOTES = Option.ofInt(
            "notes", 6, 3, 40, "how many notes must stand against a chord, and none for it, before it is doubted");

    private static final Option<Integer> BARS =
            Option.ofInt("bars", 8, 2, 64, "bars without a chord symbol that are worth a hint");

    /** A chord may pass over a bar of a riff; over two the ear takes it for the harmony. */
    private static final int BARS_THAT_TELL = 2;

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(NOTES, BARS);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        if (analysis.harmony().source() != Harmony.Source.SCORE) {
            return Stream.of();
        }
        Map<Integer, List<Note>> notes = analysis.solo().notes().stream()
                .filter(Note::isPitched)
                .collect(Collectors.groupingBy(note -> note.bar().index()));
        int enough = settings.get(NOTES);
        Stream<Finding> fought = analysis.harmony().spans().stream()
                .flatMap(span ->
                        span
                                .chord()
                                .flatMap(chord -> fought(barsUnder(analysis.solo(), span), notes, chord, enough))
                                .stream());
        return Stream.concat(fought, bare(analysis, settings.get(BARS)).stream());
    }

    /** The whole bars that a chord lasts. */
    private static List<Bar> barsUnder(Solo solo, ChordSpan span) {
        List<Bar> bars = solo.bars();
        int first = span.start().isPositive() ? solo.barAt(span.start()).index() : 0;
        return bars.subList(first, bars.size()).stream()
                .dropWhile(bar -> bar.start().isLessThan(span.start()))
                .takeWhile(bar -> !bar.end().isMoreThan(span.end()))
                .toList();
    }

    /** The first two bars under a chord that hold none of its tones. */
    private static Optional<Finding> fought(
            List<Bar> bars, Map<Integer, List<Note>> notes, ChordSymbol chord, int enough) {
        return IntStream.rangeClosed(0, bars.size() - BARS_THAT_TELL)
                .mapToObj(first -> bars.subList(first, first + BARS_THAT_TELL).stream()
                        .flatMap(bar -> notes.getOrDefault(bar.index(), List.of()).stream())
                        .toList())
                .filter(two -> two.size() >= enough && two.stream().noneMatch(note -> isToneOf(chord, note)))
                .findFirst()
                .map(two -> found(two, chord));
    }

    private static boolean isToneOf(ChordSymbol chord, Note note) {
        return chord.contains(Math.floorMod(note.heardMidi(), 12));
    }

    private static Finding found(List<Note> notes, ChordSymbol chord) {
        return Finding.at(notes.get(0))
                .to(notes.get(notes.size() - 1))
                .doubt(Severity.WARNING)
                .explain(
                        "None of the %d notes of two bars over %s is a tone of it: the chord, or its root, looks like a slip."
                                .formatted(notes.size(), chord))
                .value("chord", chord.toString())
                .build();
    }

    /** Where the score has symbols, but none for a long time: an "N.C." says that none is meant, and is no gap. */
    private static Optional<Finding> bare(Analysis analysis, int enough) {
        if (analysis.solo().chords().isEmpty()) {
            return Optional.empty();
        }
        Fraction first = analysis.solo().chords().get(0).onset();
        List<Note> before = analysis.solo().notes().stream()
                .filter(note -> note.onset().isLessThan(first))
                .toList();
        if (before.isEmpty()) {
            return Optional.empty();
        }
        long bars = analysis.solo().bars().stream()
                .filter(bar -> !bar.start().isLessThan(before.get(0).bar().start())
                        && !bar.end().isMoreThan(first))
                .count();
        return bars < enough
                ? Optional.empty()
                : Optional.of(Finding.at(before.get(0))
                        .doubt(Severity.HINT)
                        .explain("The first %d bars have no chord symbol, and the bars after them do.".formatted(bars))
                        .value("bars", (int) bars)
                        .build());
    }
}
