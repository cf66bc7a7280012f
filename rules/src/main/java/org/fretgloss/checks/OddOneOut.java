package org.fretgloss.checks;

import java.util.List;
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

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        int least = settings.get(LEAST);
        List<List<Note>> phrases = analysis.phrases().stream()
                .map(Phrase::notes)
                .filter(notes -> notes.size() >= least)
                .toList();
        return IntStream.range(0, phrases.size())
                .mapToObj(i -> firstOdd(phrases.subList(0, i), phrases.get(i)))
                .flatMap(Optional::stream);
    }

    /** The doubt about a phrase, told against the first earlier one that it all but repeats; none if one is repeated whole. */
    private static Optional<Finding> firstOdd(List<List<Note>> earlier, List<Note> phrase) {
        Optional<Finding> odd = Optional.empty();
        for (List<Note> model : earlier) {
            if (model.size() == phrase.size()) {
                List<Integer> differing = differing(model, phrase);
                if (differing.isEmpty()) {
                    return Optional.empty();
                }
                int place = differing.get(0);
                // an ending may be varied, and a beginning too: a slip is told only inside
                boolean inside = place > 0 && differing.get(differing.size() - 1) < phrase.size() - 1;
                if (odd.isEmpty() && inside && (differing.size() == 1 || isOneMoment(model, phrase, differing))) {
                    odd = Optional.of(found(model.get(place), phrase.get(place)));
                }
            }
        }
        return odd;
    }

    /** Two notes side by side share their time otherwise: one moment between them has moved. */
    private static boolean isOneMoment(List<Note> model, List<Note> phrase, List<Integer> differing) {
        int place = differing.get(0);
        return differing.equals(List.of(place, place + 1))
                && differing.stream().allMatch(i -> isStruckAlike(model.get(i), phrase.get(i)))
                && together(model, place).equals(together(phrase, place));
    }

    private static Fraction together(List<Note> notes, int place) {
        return notes.get(place).duration().plus(notes.get(place + 1).duration());
    }

    private static List<Integer> differing(List<Note> model, List<Note> phrase) {
        return IntStream.range(0, phrase.size())
                .filter(i -> !isStruckAlike(model.get(i), phrase.get(i))
                        || !model.get(i).duration().equals(phrase.get(i).duration()))
                .boxed()
                .toList();
    }

    private static boolean isStruckAlike(Note one, Note other) {
        return one.grace() == other.grace()
                && one.at().equals(other.at())
                && one.midi() == other.midi()
                && one.bend().equals(other.bend());
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
