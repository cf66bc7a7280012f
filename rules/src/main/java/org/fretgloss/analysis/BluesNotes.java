package org.fretgloss.analysis;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/** The notes that a blues adds to its scale as a matter of course: ♭5, 6, 2, and 3 where no chord contradicts it. */
final class BluesNotes {

    /** ♭5, 6 and 2, in semitones above the tonic. */
    private static final Set<Integer> ALWAYS = Set.of(6, 9, 2);

    private static final int MINOR_THIRD = 3;
    private static final int MAJOR_THIRD = 4;

    private final Analysis analysis;
    private final boolean hasBluesForm;

    /** By chroma: the roots of the dominant sevenths that sound anywhere. */
    private final Set<Integer> dominantRoots;

    BluesNotes(Analysis analysis) {
        this.analysis = analysis;
        this.hasBluesForm =
                analysis.form().flatMap(laid -> laid.progression().key()).isPresent();
        this.dominantRoots = analysis.harmony().spans().stream()
                .flatMap(span -> span.chord().stream())
                .filter(ChordSymbol::isDominant)
                .map(chord -> chord.root().chroma())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Whether the solo is a blues there: its I sounds as a dominant seventh, or a blues form is in force. */
    private boolean isBlues(Note note) {
        return hasBluesForm || dominantRoots.contains(tonicAt(note));
    }

    /** Whether an outside note is one of them. */
    boolean isAdded(Note note) {
        boolean added = ALWAYS.contains(degree(note)) || degree(note) == MAJOR_THIRD;
        return isBlues(note) && added && clashOf(note).isEmpty();
    }

    /**
     * The chord that a note clashes with as the home's 3, since the chord holds the home's ♭3, as the IV7 does: the chord
     * it is struck over, or one that it is held into for a beat or more.
     */
    Optional<ChordSymbol> clashOf(Note note) {
        if (!isBlues(note) || degree(note) != MAJOR_THIRD) {
            return Optional.empty();
        }
        return analysis.chordAt(note)
                .filter(chord -> contradicts(chord, tonicAt(note)))
                .or(() -> heldInto(note).filter(chord -> contradicts(chord, tonicAt(note))));
    }

    private Optional<ChordSymbol> heldInto(Note note) {
        Fraction beat = note.bar().meter().beatLength();
        return analysis.harmony()
                .spanAt(note.onset())
                .map(ChordSpan::end)
                .filter(change -> !note.end().minus(change).isLessThan(beat))
                .flatMap(analysis.harmony()::chordAt);
    }

    private static boolean contradicts(ChordSymbol chord, int tonic) {
        return chord.contains((tonic + MINOR_THIRD) % 12) && !chord.contains((tonic + MAJOR_THIRD) % 12);
    }

    private int tonicAt(Note note) {
        return analysis.homeAt(note).scale().tonic().chroma();
    }

    private int degree(Note note) {
        return Math.floorMod(note.heardMidi() - tonicAt(note), 12);
    }
}
