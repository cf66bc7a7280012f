package org.fretgloss.neck;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Scale;

/**
 * Where the five boxes of a minor pentatonic lie on a neck, from the nut (or the capo) to fret 24.
 *
 * <p>A box begins with a scale note under the first finger on the lowest-sounding string: the tonic for box 1, the ♭3
 * for box 2, and so on up the neck. On every other string it has the first two scale notes from one fret below that
 * finger upward. In standard tuning these are the five shapes that every method prints (common practice, no source); on
 * other strings the hand keeps the same stretch. Frets beyond the ends of the neck are left out, so that the open
 * position is a box like the rest.
 *
 * <p>Where only the lowest string is retuned (drop D), the hand plays the familiar shapes on the others: the first
 * finger is reckoned as if the lowest string stood a fourth below its neighbour, the window comes from the other
 * strings, and the lowest string has whatever scale notes lie inside it.
 */
public final class BoxLayout {

    private static final int LAST_FRET = Neck.FRETS;

    private final Tuning tuning;
    private final int tonicChroma;

    private final OptionalInt retunedString;

    /** MIDI number of the open string that the first finger is reckoned on. */
    private final int reference;

    private BoxLayout(Tuning tuning, int tonicChroma) {
        this.tuning = tuning;
        this.tonicChroma = tonicChroma;
        this.retunedString = tuning.retunedString();
        this.reference = retunedString.isPresent()
                ? tuning.openMidi(retunedString.getAsInt() - 1) - Tuning.FOURTH
                : strings().mapToInt(tuning::openMidi).min().orElseThrow();
    }

    /**
     * The boxes on the neck, rising; their numbers go round 1 to 5.
     *
     * @param tonicChroma the tonic of the minor pentatonic, in semitones above C
     */
    public static List<Box> of(Tuning tuning, int tonicChroma) {
        BoxLayout layout = new BoxLayout(tuning, tonicChroma);
        return IntStream.rangeClosed(0, LAST_FRET)
                .filter(fret -> layout.isInScale(layout.reference + fret))
                .mapToObj(layout::boxFrom)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The box whose first finger lies on a fret, unless the neck ends before some string has a note of it. */
    private Optional<Box> boxFrom(int firstFinger) {
        List<List<Integer>> plain = strings()
                .filter(string -> !isRetuned(string))
                .map(string -> twoNotesFrom(firstFinger - 1, string))
                .toList();
        if (plain.stream().anyMatch(List::isEmpty)) {
            return Optional.empty();
        }
        int lowest = plain.stream().mapToInt(frets -> frets.get(0)).min().orElseThrow();
        int highest = plain.stream()
                .mapToInt(frets -> frets.get(frets.size() - 1))
                .max()
                .orElseThrow();
        List<List<Integer>> pattern = strings()
                .map(string -> isRetuned(string)
                        ? notesWithin(lowest, highest, string)
                        : twoNotesFrom(firstFinger - 1, string))
                .toList();
        return Optional.of(new Box(number(firstFinger), pattern, lowest, highest));
    }

    private int number(int firstFinger) {
        Degree degree = Degree.named(reference + firstFinger - tonicChroma);
        return Scale.MINOR_PENTATONIC.degrees().indexOf(degree) + 1;
    }

    /** The first two scale notes of a string from a fret upward, as far as they lie on the neck. */
    private List<Integer> twoNotesFrom(int fret, int string) {
        return IntStream.iterate(fret, next -> next + 1)
                .filter(place -> isInScale(tuning.openMidi(string) + place))
                .limit(2)
                .filter(place -> place >= 0 && place <= LAST_FRET)
                .boxed()
                .toList();
    }

    private List<Integer> notesWithin(int lowest, int highest, int string) {
        return IntStream.rangeClosed(lowest, highest)
                .filter(fret -> isInScale(tuning.openMidi(string) + fret))
                .boxed()
                .toList();
    }

    private boolean isInScale(int midi) {
        return Scale.MINOR_PENTATONIC.contains(midi - tonicChroma);
    }

    private boolean isRetuned(int string) {
        return retunedString.isPresent() && retunedString.getAsInt() == string;
    }

    private Stream<Integer> strings() {
        return IntStream.rangeClosed(1, tuning.size()).boxed();
    }
}
