package org.fretgloss.annotator.read;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.Frame;
import org.audiveris.proxymusic.FrameNote;
import org.fretgloss.neck.StringFret;
import org.fretgloss.neck.Tuning;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;
import org.jspecify.annotations.Nullable;

/** A chord diagram: where the fingers lie tells which chord it is, where its symbol does not. */
final class ChordDiagram {

    private ChordDiagram() {}

    /** The chord on a root that the diagram's strings and frets sound; the frets count from the capo. */
    static Optional<ChordSymbol> read(@Nullable Frame frame, PitchClass root, Tuning tuning) {
        if (frame == null) {
            return Optional.empty();
        }
        Set<Integer> chromas = frame.getFrameNote().stream()
                .flatMap(note -> place(note).stream())
                .filter(place -> tuning.hasString(place.string()))
                .map(place -> Math.floorMod(tuning.midi(place), 12))
                .collect(Collectors.toSet());
        return chromas.isEmpty() ? Optional.empty() : ChordSymbol.sounding(root, chromas);
    }

    private static Optional<StringFret> place(FrameNote note) {
        if (note.getString() == null || note.getFret() == null) {
            return Optional.empty();
        }
        OptionalInt string = Numbers.whole(note.getString().getValue());
        OptionalInt fret = Numbers.whole(note.getFret().getValue());
        return string.isPresent() && fret.isPresent()
                ? Optional.of(new StringFret(string.getAsInt(), fret.getAsInt()))
                : Optional.empty();
    }
}
