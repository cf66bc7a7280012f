package org.fretgloss.checks;

import java.util.Set;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.solo.Note;

/**
 * Notes outside a home scale that the solo has shown to be its own: what colours a line is heard together, or again, within
 * two bars. Degrees are in semitones above the tonic.
 */
final class Colours {

    private static final int TRITONE = 6;

    /** The 2, 3 and 6: over a minor home the line has turned major. */
    private static final Set<Integer> MAJOR = Set.of(2, 4, 9);

    /** The ♭3 and ♭7: over a major home it has turned minor. */
    private static final Set<Integer> MINOR = Set.of(3, 10);

    /** The 2 and 6: what the Dorian adds to a minor pentatonic. */
    private static final Set<Integer> DORIAN = Set.of(2, 9);

    private final Analysis analysis;
    private final Soundings<Integer> pitchClasses;

    Colours(Analysis analysis, Soundings<Integer> pitchClasses) {
        this.analysis = analysis;
        this.pitchClasses = pitchClasses;
    }

    /**
     * Whether a note is heard again and belongs to the other mode's colour, all of which sounds around it; or is the ♭5 of a
     * minor home.
     *
     * @param movesOn whether the line goes on from it by step, as it must from a ♭5
     */
    boolean isOwn(Note note, boolean movesOn) {
        boolean isFlatFive = isMinor(note) && degree(note) == TRITONE && movesOn;
        return isHeardAgain(note) && (isFlatFive || isOf(isMinor(note) ? MAJOR : MINOR, note));
    }

    /** Whether it is the 2 or 6 of a minor home, and both sound around it. */
    boolean isDorian(Note note) {
        return isMinor(note) && isOf(DORIAN, note);
    }

    /** Whether its pitch sounds once more within two bars, in any octave. */
    boolean isHeardAgain(Note note) {
        return pitchClasses.near(note, Math.floorMod(note.heardMidi(), 12)) > 1;
    }

    private boolean isOf(Set<Integer> colour, Note note) {
        int tonic = home(note).tonic().chroma();
        return colour.contains(degree(note))
                && colour.stream().allMatch(degree -> pitchClasses.near(note, (tonic + degree) % 12) > 0);
    }

    private boolean isMinor(Note note) {
        return !home(note).scale().hasMajorThird();
    }

    private int degree(Note note) {
        return home(note).degreeOf(note.heardMidi()).chroma();
    }

    private HomeScale home(Note note) {
        return analysis.homeAt(note).scale();
    }
}
