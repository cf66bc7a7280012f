package org.fretgloss.annotator.corpus;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.read.ScoreReader;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.solo.Solo;

/** How much of a processor's time a score takes to be read, to be analysed and to be asked about by all rules. */
public final class ReadingTimes {

    private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();
    private static final int RUNS = 15;
    private static final double NANOS_IN_A_MILLISECOND = 1e6;

    private ReadingTimes() {}

    /**
     * Prints the best of some runs each, and the first, which is what one run of the command pays.
     *
     * @param args scores
     */
    public static void main(String[] args) throws Exception {
        System.out.println("| score | bytes | notes | step | first ms | best ms |");
        System.out.println("|---|---|---|---|---|---|");
        Rulebook rules = Rulebook.load(ReadingTimes.class.getClassLoader());
        for (String arg : args) {
            Path score = Path.of(arg);
            Solo solo = read(score);
            Analysis analysis = Analysis.of(solo, Given.NOTHING);
            String row = "| %s | %d | %d "
                    .formatted(
                            score.getFileName(), Files.size(score), solo.notes().size());
            System.out.println(row + "| reading " + times(() -> read(score)));
            System.out.println(row + "| analysis " + times(() -> Analysis.of(solo, Given.NOTHING)));
            System.out.println(row + "| rules " + times(() -> rules.examine(analysis, Map.of())));
        }
    }

    private static Solo read(Path score) throws Exception {
        return ScoreReader.read(NoteScanner.over(ScoreFile.read(score).text()), Optional.empty())
                .solo();
    }

    private static String times(Callable<Object> step) throws Exception {
        double first = time(step);
        double best = first;
        for (int run = 1; run < RUNS; run++) {
            best = Math.min(best, time(step));
        }
        return String.format(Locale.ROOT, "| %.0f | %.0f |", first, best);
    }

    private static double time(Callable<Object> step) throws Exception {
        long start = THREAD.getCurrentThreadCpuTime();
        Object result = step.call();
        double millis = (THREAD.getCurrentThreadCpuTime() - start) / NANOS_IN_A_MILLISECOND;
        Objects.requireNonNull(result);
        return millis;
    }
}
