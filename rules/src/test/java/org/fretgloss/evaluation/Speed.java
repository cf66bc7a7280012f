package org.fretgloss.evaluation;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.Homes;
import org.fretgloss.analysis.Phrasing;
import org.fretgloss.analysis.Stages;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/**
 * How much of a processor's time each step of the analysis takes, for solos of several lengths. What else the machine
 * does hardly counts in it, and neither does the collection of garbage. Prints; the times prove nothing by themselves.
 */
final class Speed {

    /** Notes of a solo that is only played so that the first row is not slower than it need be. */
    private static final int WARM_UP = 2_000;

    private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();
    private static final int RUNS = 3;
    private static final double NANOS_IN_A_MILLISECOND = 1e6;
    private static final List<String> STEPS = List.of(
            "phrases",
            "homes",
            "boxes",
            "string and fret",
            "analysis, frets written",
            "rules",
            "analysis and rules, no frets");

    private final Rulebook rules = Rulebook.load(Speed.class.getClassLoader());

    /** A table in milliseconds, the best of some runs each: a row for each length, with rests and without. */
    Stream<String> table(List<Integer> lengths) {
        times(LongSolo.of(WARM_UP, true));
        return Stream.concat(
                Stream.of("| notes | " + String.join(" | ", STEPS) + " |", "|---" + "|---".repeat(STEPS.size()) + "|"),
                lengths.stream()
                        .flatMap(length -> Stream.of(true, false)
                                .map(rests -> row(length + (rests ? "" : ", no rest"), LongSolo.of(length, rests)))));
    }

    private String row(String name, Solo solo) {
        return times(solo).stream()
                .map(millis -> String.format(Locale.ROOT, millis < 10 ? "%.1f" : "%.0f", millis))
                .collect(Collectors.joining(" | ", "| " + name + " | ", " |"));
    }

    /** In the order of the steps. */
    private List<Double> times(Solo solo) {
        Solo bare = bare(solo);
        Phrasing phrasing = Stages.phrases(solo);
        Homes homes = Stages.homes(solo, phrasing);
        Analysis analysis = Analysis.of(solo, Given.NOTHING);
        return Stream.<Supplier<Object>>of(
                        () -> Stages.phrases(solo),
                        () -> Stages.homes(solo, phrasing),
                        () -> Stages.boxes(solo, homes, phrasing),
                        () -> Stages.fingering(bare, homes),
                        () -> Analysis.of(solo, Given.NOTHING),
                        () -> rules.examine(analysis, Map.of()),
                        () -> rules.examine(Analysis.of(bare, Given.NOTHING), Map.of()))
                .map(Speed::time)
                .toList();
    }

    private static double time(Supplier<Object> step) {
        double best = Double.POSITIVE_INFINITY;
        for (int run = 0; run < RUNS; run++) {
            long start = THREAD.getCurrentThreadCpuTime();
            Object result = step.get();
            best = Math.min(best, (THREAD.getCurrentThreadCpuTime() - start) / NANOS_IN_A_MILLISECOND);
            Objects.requireNonNull(result);
        }
        return best;
    }

    /** The same without string and fret. */
    private static Solo bare(Solo solo) {
        List<Note> sorted = solo.notes().stream()
                .map(note -> note.at(Optional.empty()))
                .sorted(Note.SOUNDING_ORDER)
                .toList();
        List<Note> notes = new ArrayList<>();
        sorted.forEach(note -> notes.add(note.withIndex(notes.size())));
        return new Solo(
                solo.title(),
                solo.part(),
                solo.tuning(),
                solo.tuningIsWritten(),
                solo.bars(),
                notes,
                solo.chords(),
                solo.tempos());
    }
}
