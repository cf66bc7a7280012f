package org.fretgloss.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Phrase;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/** A phrase that repeats an earlier one but for a single fret or length, not at its end. */
final class OddOneOut implements Rule {

    private static final Option<Integer> LEAST =
            Option.ofInt("notes", 6, 4, 40, "fewest notes of a phrase that is compared");

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(LEAST);
    }

    /** How a note is played, wherever it stands. */
    private record Played(Fraction duration, boolean grace, Optional<StringFret> at, int midi, Optional<Bend> bend) {

        static Played of(Note note) {
            return new Played(note.duration(), note.grace(), note.at(), note.midi(), note.bend());
        }

        /** Alike but for their length. */
        boolean isStruckAs(Played other) {
            return equals(new Played(duration, other.grace, other.at, other.midi, other.bend));
        }
    }

    /**
     * What two phrases must share before they are compared. An ending may be varied, and a beginning too: a slip is told
     * only inside.
     */
    private record Ends(int size, Played first, Played last) {

        static Ends of(List<Note> phrase) {
            return new Ends(phrase.size(), Played.of(phrase.get(0)), Played.of(phrase.get(phrase.size() - 1)));
        }
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        int least = settings.get(LEAST);
        Map<Ends, List<List<Note>>> earlier = new HashMap<>();
        Stream.Builder<Finding> findings = Stream.builder();
        analysis.phrases().stream()
                .map(Phrase::notes)
                .filter(notes -> notes.size() >= least)
                .forEach(phrase -> {
                    List<List<Note>> alike = earlier.computeIfAbsent(Ends.of(phrase), ends -> new ArrayList<>());
                    firstOdd(alike, phrase).ifPresent(findings::add);
                    alike.add(phrase);
                });
        return findings.build();
    }

    /**
     * The doubt about a phrase whose ends are those of earlier ones, told against the first earlier one that it all but
     * repeats; none if one is repeated whole.
     */
    private static Optional<Finding> firstOdd(List<List<Note>> earlier, List<Note> phrase) {
        Optional<Finding> odd = Optional.empty();
        for (List<Note> model : earlier) {
            List<Integer> differing = differing(model, phrase);
            if (differing.isEmpty()) {
                return Optional.empty();
            }
            if (odd.isEmpty() && (differing.size() == 1 || isOneMoment(model, phrase, differing))) {
                int place = differing.get(0);
                odd = Optional.of(found(model.get(place), phrase.get(place)));
            }
        }
        return odd;
    }

    /** Two notes side by side share their time otherwise: one moment between them has moved. */
    private static boolean isOneMoment(List<Note> model, List<Note> phrase, List<Integer> differing) {
        int place = differing.get(0);
        return differing.equals(List.of(place, place + 1))
                && differing.stream().allMatch(i -> Played.of(model.get(i)).isStruckAs(Played.of(phrase.get(i))))
                && together(model, place).equals(together(phrase, place));
    }

    private static Fraction together(List<Note> notes, int place) {
        return notes.get(place).duration().plus(notes.get(place + 1).duration());
    }

    private static List<Integer> differing(List<Note> model, List<Note> phrase) {
        return IntStream.range(0, phrase.size())
                .filter(i -> !Played.of(model.get(i)).equals(Played.of(phrase.get(i))))
                .boxed()
                .toList();
    }

    private static Finding found(Note model, Note odd) {
        String before = "bar " + model.bar().number();
        Finding.Builder finding = Finding.at(odd)
                .explain(
                        model.midi() == odd.midi()
                                ? "The phrase is that of %s but for this note's length or bend.".formatted(before)
                                : "The phrase is that of %s but for this note, which is %s there."
                                        .formatted(before, model.pitch()));
        Optional<StringFret> at = model.at().filter(place -> !model.at().equals(odd.at()));
        return at.map(place -> finding.doubt(Severity.HINT, Suggestion.of(place, model.pitch())))
                .orElseGet(() -> finding.doubt(Severity.HINT))
                .value("bar", model.bar().number())
                .build();
    }
}
