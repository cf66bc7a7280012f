package org.fretgloss.annotator.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.annotator.Checked;
import org.fretgloss.annotator.Scope;
import org.fretgloss.annotator.config.Silenced;
import org.fretgloss.rule.Doubt;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Glyphs;

/** What a person reads after proof-reading: a heading, then bar by bar the doubts, the worst of a bar first. */
public final class ProofSheet {

    private static final Comparator<Gloss> WORST_FIRST =
            Comparator.comparing(gloss -> doubt(gloss).severity());

    private final BiFunction<Severity, String, String> paint;

    /**
     * A sheet.
     *
     * @param paint gives a severity's word its colour, or leaves it as it is
     */
    public ProofSheet(BiFunction<Severity, String, String> paint) {
        this.paint = paint;
    }

    /** One line each, without line ends; the score's own texts are made harmless. */
    public List<String> of(Checked checked) {
        return headed(counts(checked) + accepted(checked, " accepted"), checked);
    }

    /** The same where what is open is let stand from now on. */
    public List<String> ofAccepted(Checked checked) {
        return checked.glosses().isEmpty()
                ? of(checked)
                : headed("accepted: " + counts(checked) + accepted(checked, " before"), checked);
    }

    private List<String> headed(String heading, Checked checked) {
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.of(checked.score() + ": " + heading));
        Map<Bar, List<Gloss>> byBar = checked.glosses().stream()
                .collect(Collectors.groupingBy(
                        gloss -> gloss.finding().note().bar(), LinkedHashMap::new, Collectors.toList()));
        byBar.forEach((bar, doubts) -> {
            lines.add(PlainText.of("bar " + bar.number()));
            doubts.stream().sorted(WORST_FIRST).map(this::line).forEach(lines::add);
        });
        stale(checked.doubts()).map(PlainText::of).forEach(lines::add);
        return lines;
    }

    private static String counts(Checked checked) {
        String open = Stream.of(Severity.values())
                .filter(severity -> checked.count(severity) > 0)
                .map(severity -> counted(checked.count(severity), severity.toString()))
                .collect(Collectors.joining(", "));
        return open.isEmpty() ? nothing(checked.scope()) : open;
    }

    private static String nothing(Scope scope) {
        return switch (scope) {
            case ALL -> "nothing to doubt";
            case PART -> "nothing to doubt in what could be checked";
            case NOTHING -> "none of the asked checks could be made: they need string and fret";
        };
    }

    private static String accepted(Checked checked, String when) {
        int accepted = checked.doubts().accepted().size();
        return accepted == 0 ? "" : " (" + accepted + when + ")";
    }

    private static String counted(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    /** "  beat 3½  warning  string 3 fret 8: ... Meant: string 3 fret 7, D4? (wrong-box)". */
    private String line(Gloss gloss) {
        Finding finding = gloss.finding();
        Severity severity = doubt(gloss).severity();
        String word =
                severity + " ".repeat("warning".length() - severity.toString().length());
        String place = "  beat " + Glyphs.of(finding.note().beat()) + "  ";
        String at = finding.note()
                .at()
                .or(() -> finding.note().written().signs().offNeck())
                .map(where ->
                        "string " + where.string() + (where.isBeyondTelling() ? "" : " fret " + where.fret()) + ": ")
                .orElse("");
        String meant = doubt(gloss).suggestion().map(ProofSheet::meant).orElse("");
        return place
                + paint.apply(severity, word)
                + "  "
                + PlainText.of(at + finding.explanation() + meant + " (" + gloss.rule() + ")");
    }

    private static String meant(Suggestion suggestion) {
        return " Meant: "
                + Stream.concat(
                                suggestion.at().stream().map(at -> "string " + at.string() + " fret " + at.fret()),
                                suggestion.pitch().stream().map(Object::toString))
                        .collect(Collectors.joining(", "))
                + "?";
    }

    private static Stream<String> stale(Silenced doubts) {
        return doubts.areAnotherScores()
                ? Stream.of(
                        "none of the entries in the corrections file fits this score: the file may belong to another"
                                + " score, or the score has been changed throughout")
                : doubts.stale().stream()
                        .map(
                                entry -> "the accepted " + entry
                                        + " fits nothing any more: it was mended or its notes have changed; take the entry out");
    }

    private static Doubt doubt(Gloss gloss) {
        return gloss.finding().doubt().orElseThrow();
    }
}
