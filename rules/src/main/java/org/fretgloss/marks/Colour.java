package org.fretgloss.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Phrase;
import org.fretgloss.pitch.Degree;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;

/** A phrase that turns from the minor pentatonic to the major one on the same tonic, or back. */
final class Colour implements Rule {

    private static final Option<Integer> LEAST =
            Option.ofInt("least", 3, 2, 8, "fewest notes in a phrase that speak for its colour");

    private static final double MOST_SURE = 0.9;
    private static final double LEAST_SURE = 0.6;
    private static final double FOR_EACH_NOTE = 0.05;

    @Override
    public Line line() {
        return Line.NOTES;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(LEAST);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        int least = settings.get(LEAST);
        List<Finding> findings = new ArrayList<>();
        Optional<Boolean> inForce = Optional.empty();
        Optional<Note> before = Optional.empty();
        for (Phrase phrase : analysis.phrases()) {
            PhraseColour colour = PhraseColour.of(analysis, phrase.notes());
            Optional<Boolean> heard = colour.isMajor(least);
            boolean opens = before.isEmpty() || !analysis.homes().isSame(before.get(), phrase.first());
            if (opens) {
                inForce = heard.or(() -> Optional.of(colour.home().scale().hasMajorThird()));
            } else if (heard.isPresent() && !heard.equals(inForce)) {
                findings.add(found(analysis, phrase.first(), colour, heard.get()));
                inForce = heard;
            }
            before = Optional.of(phrase.first());
        }
        return findings.stream();
    }

    private static Finding found(Analysis analysis, Note first, PhraseColour colour, boolean major) {
        List<Note> speaking = major ? colour.major() : colour.minor();
        List<Note> against = major ? colour.minor() : colour.major();
        String name = colour.home().tonic() + (major ? " major pentatonic" : " minor pentatonic");
        return Finding.at(first)
                .text(major ? "maj pent" : "min pent")
                .explain(Places.inSolo(analysis, first) + "the phrase turns to the colour of " + name + ", told by its "
                        + counted(colour, speaking) + ".")
                .confidence(Math.min(MOST_SURE, LEAST_SURE + FOR_EACH_NOTE * (speaking.size() - against.size())))
                .value("to", major ? "major" : "minor")
                .build();
    }

    /** "2 (twice), 3 (once), 6 (3 times)". */
    private static String counted(PhraseColour colour, List<Note> notes) {
        return colour.degrees(notes).stream()
                .map(degree -> degree + " ("
                        + times(notes.stream()
                                .filter(note -> isHeardAs(degree, colour, note))
                                .count())
                        + ")")
                .collect(Collectors.joining(", "));
    }

    private static boolean isHeardAs(Degree degree, PhraseColour colour, Note note) {
        return colour.home().degreeOf(note.heardMidi()).equals(degree);
    }

    private static String times(long count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }
}
