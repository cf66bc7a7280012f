package example;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;

/** A leap between two notes that is wide enough to be heard as a gesture. */
public final class WideLeap implements Rule {

    private static final Option<Integer> LEAST =
            Option.ofInt("least", 12, 7, 24, "smallest leap that is marked, in semitones");

    @Override
    public Line line() {
        return Line.SHAPE;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(LEAST);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        int least = settings.get(LEAST);
        List<Note> notes = analysis.solo().notes();
        return IntStream.range(1, notes.size())
                .filter(i -> leap(notes.get(i - 1), notes.get(i)) >= least)
                .mapToObj(i -> found(analysis, notes.get(i - 1), notes.get(i)));
    }

    private static int leap(Note from, Note to) {
        return from.isDead() || to.isDead() ? 0 : Math.abs(to.heardMidi() - from.heardMidi());
    }

    private static Finding found(Analysis analysis, Note from, Note to) {
        return Finding.at(from)
                .to(to)
                .text("leap " + leap(from, to))
                .explain("From " + analysis.placeOf(from) + " the line leaps " + leap(from, to) + " semitones.")
                .value("semitones", leap(from, to))
                .build();
    }
}
