package org.fretgloss.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Technique;

/** A string that the instrument does not have, or a fret before the nut or beyond the neck. */
final class OffNeck implements Rule {

    private static final Option<Integer> FRETS =
            Option.ofInt("frets", Neck.FRETS, 12, 36, "frets of the neck, counted from the nut");

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public boolean needsFrets() {
        return true;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(FRETS);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Tuning tuning = analysis.solo().tuning();
        int highest = settings.get(FRETS) - tuning.capo();
        return analysis.solo().notes().stream()
                .filter(note -> !note.has(Technique.HARMONIC) && !note.isDead())
                .flatMap(note -> note
                        .written()
                        .signs()
                        .offNeck()
                        .or(note::at)
                        .flatMap(place -> why(place, tuning, highest))
                        .map(why -> found(note, why))
                        .stream());
    }

    private static Optional<String> why(StringFret place, Tuning tuning, int highest) {
        if (!tuning.hasString(place.string())) {
            return Optional.of(
                    "String %d is written, and the instrument has %d.".formatted(place.string(), tuning.size()));
        }
        if (place.fret() < 0) {
            return Optional.of("%s is written, and frets begin at 0.".formatted(fret(place)));
        }
        if (place.fret() > highest) {
            return Optional.of("%s is written, and the neck ends at fret %d%s."
                    .formatted(fret(place), highest, tuning.capo() > 0 ? " above the capo" : ""));
        }
        return Optional.empty();
    }

    private static String fret(StringFret place) {
        String words = place.fretInWords();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static Finding found(Note note, String why) {
        return Finding.at(note).doubt(Severity.ERROR).explain(why).build();
    }
}
