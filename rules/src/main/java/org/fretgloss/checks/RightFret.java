package org.fretgloss.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.Box;
import org.fretgloss.neck.Neck;
import org.fretgloss.neck.StringFret;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** The place beside a doubted one that was probably meant: a fret down or up, or the next string, inside scale or chord. */
final class RightFret {

    private static final int SEVEN_NOTES = 7;

    /** Semitones between neighbours of a pentatonic, at most. */
    private static final int WIDEST_STEP = 3;

    private final Analysis analysis;
    private final Note note;
    private final StringFret at;
    private final List<Note> neighbours;

    /** @param note a fretted one */
    RightFret(Analysis analysis, Note note) {
        Solo solo = analysis.solo();
        this.analysis = analysis;
        this.note = note;
        this.at = note.at().orElseThrow();
        this.neighbours = Stream.concat(solo.before(note).stream(), solo.after(note).stream())
                .toList();
    }

    /** The likeliest place; none where no box is in force, the note's own place belongs to it, or nothing beside it fits. */
    Optional<StringFret> find() {
        return analysis.boxes()
                .boxOf(note)
                .filter(box -> !box.patternHolds(at))
                .flatMap(box -> candidates()
                        .filter(place -> isUnderTheHand(box, place))
                        .filter(this::isInside)
                        .min(likeliestFirst(box)));
    }

    private Stream<StringFret> candidates() {
        return Stream.of(
                        new StringFret(at.string(), at.fret() - 1),
                        new StringFret(at.string(), at.fret() + 1),
                        new StringFret(at.string() - 1, at.fret()),
                        new StringFret(at.string() + 1, at.fret()))
                .filter(place -> analysis.solo().tuning().hasString(place.string())
                        && Neck.holds(place, analysis.solo().tuning()));
    }

    /** On its own string the finger is there already, even where it reaches out of the box. */
    private boolean isUnderTheHand(Box box, StringFret place) {
        return place.string() == at.string() || isOfBox(box, place);
    }

    /** A box's pattern is pentatonic: under a larger scale all of its window is the hand's. */
    private boolean isOfBox(Box box, StringFret place) {
        boolean isLarge = analysis.homeAt(note).scale().scale().degrees().size() >= SEVEN_NOTES;
        return box.patternHolds(place) || (isLarge && box.windowHolds(place));
    }

    private boolean isInside(StringFret place) {
        int midi = heard(place);
        return analysis.homeAt(note).scale().contains(midi)
                || analysis.chordAt(note)
                        .filter(chord -> chord.contains(Math.floorMod(midi, 12)))
                        .isPresent();
    }

    private int heard(StringFret place) {
        return analysis.solo().tuning().midi(place) + note.heardMidi() - note.midi();
    }

    /**
     * The box's own first, then the same string; then a note that is not the neighbours' own, which a player would not have
     * struck again.
     */
    private Comparator<StringFret> likeliestFirst(Box box) {
        return Comparator.comparing((StringFret place) -> !isOfBox(box, place))
                .thenComparing(place -> !runsThrough(place))
                .thenComparing(place -> place.string() != at.string())
                .thenComparing(place -> neighbours.stream().anyMatch(other -> other.heardMidi() == heard(place)))
                .thenComparingInt(this::leap);
    }

    /** Whether the line would come by a step of a pentatonic and go on by one the same way. */
    private boolean runsThrough(StringFret place) {
        if (neighbours.size() < 2) {
            return false;
        }
        int to = heard(place) - neighbours.get(0).heardMidi();
        int from = neighbours.get(1).heardMidi() - heard(place);
        return Integer.signum(to) * Integer.signum(from) > 0 && Math.max(Math.abs(to), Math.abs(from)) <= WIDEST_STEP;
    }

    private int leap(StringFret place) {
        return neighbours.stream()
                .mapToInt(other -> Math.abs(other.heardMidi() - heard(place)))
                .sum();
    }
}
