package org.fretgloss.annotator.corpus;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.read.BendDialects;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.jspecify.annotations.Nullable;

/**
 * Reads every score of a folder and prints a line for each: read or refused, the part chosen, notes, the distance between
 * written and fretted pitch, how bends are written, in which dialects, and how many were read, doubts, and whether stripping gives back the
 * original and annotating twice equals once.
 *
 * <pre>
 * mvn -B -ntp -q -Pcorpus -pl annotator -am process-test-classes -Dcorpus=FOLDER
 * </pre>
 */
public final class CorpusReport {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();

    private final PrintStream out;
    private int read;
    private int refused;
    private int failed;
    private int kept;
    private int alike;

    private CorpusReport(PrintStream out) {
        this.out = out;
    }

    /** Reports on the folders named. */
    public static void main(String @Nullable [] folders) throws IOException {
        CorpusReport report = new CorpusReport(new PrintStream(System.out, true, StandardCharsets.UTF_8));
        report.out.println(
                "| score | part | notes | written above fret | bend elements | dialects | bent notes | doubts | stripped | twice |");
        report.out.println("|---|---|---|---|---|---|---|---|---|---|");
        for (String folder : folders == null ? new String[0] : folders) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.sorted().forEach(report::tell);
            }
        }
        report.out.printf(
                "%n%d read, %d refused, %d failed; stripped to the original %d, annotated twice alike %d%n",
                report.read, report.refused, report.failed, report.kept, report.alike);
    }

    private void tell(Path file) {
        try {
            out.println(line(file));
            read++;
        } catch (ScoreException e) {
            out.println("| " + file.getFileName() + " | refused: " + e.getMessage() + " |");
            refused++;
        } catch (IOException | RuntimeException e) {
            out.println("| " + file.getFileName() + " | FAILED: " + e + " |");
            failed++;
        }
    }

    private String line(Path file) throws IOException, ScoreException {
        ScoreFile score = ScoreFile.read(file);
        Annotated annotated = FRETGLOSS.annotate(score, Request.PLAIN);
        ScoreFile written = ScoreFile.of(file.toString(), annotated.bytes());
        boolean isKept = Arrays.equals(Fretgloss.strip(written).bytes(), Files.readAllBytes(file));
        boolean isAlike =
                Arrays.equals(FRETGLOSS.annotate(written, Request.PLAIN).bytes(), annotated.bytes());
        kept += isKept ? 1 : 0;
        alike += isAlike ? 1 : 0;
        Solo solo = annotated.analysis().solo();
        List<String> cells = List.of(
                String.valueOf(file.getFileName()),
                solo.part().id() + " " + solo.part().name(),
                String.valueOf(solo.notes().size()),
                offsets(solo),
                BendSigns.of(score.text()),
                BendDialects.of(score.text()),
                String.valueOf(solo.notes().stream()
                        .filter(note -> note.bend().isPresent())
                        .count()),
                String.valueOf(FRETGLOSS
                        .check(score, Request.PLAIN, rule -> true)
                        .from(Severity.WARNING)
                        .glosses()
                        .size()),
                isKept ? "yes" : "NO",
                isAlike ? "yes" : "NO");
        return "| " + String.join(" | ", cells) + " |";
    }

    /** "12 (40), 0 (1)": each distance and how many notes have it, the commonest first. */
    private static String offsets(Solo solo) {
        Map<Integer, Long> counts = solo.notes().stream()
                .filter(note -> note.at().isPresent())
                .collect(Collectors.groupingBy((Note note) -> note.written().offset(), Collectors.counting()));
        return counts.isEmpty()
                ? "no frets"
                : counts.entrySet().stream()
                        .sorted(Map.Entry.<Integer, Long>comparingByValue().reversed())
                        .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
                        .collect(Collectors.joining(", "));
    }
}
