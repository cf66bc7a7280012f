package org.fretgloss.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fretgloss.analysis.Progression;
import org.fretgloss.pitch.ChordKind;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.PitchClass;

/** Reads bars of plain chords, root and kind, until progressions are read everywhere in one way. */
final class PlainChords {

    private PlainChords() {}

    static Progression parse(String text) {
        List<List<Optional<ChordSymbol>>> bars = new ArrayList<>();
        for (String bar : text.split("\\|", -1)) {
            if (bar.strip().equals("%")) {
                bars.add(bars.get(bars.size() - 1));
            } else {
                bars.add(Arrays.stream(bar.strip().split("\\s+"))
                        .map(PlainChords::chord)
                        .toList());
            }
        }
        return new Progression("given", Optional.empty(), bars);
    }

    private static Optional<ChordSymbol> chord(String name) {
        if (name.equals("N.C.")) {
            return Optional.empty();
        }
        int root = name.length() > 1 && "b#♭♯".indexOf(name.charAt(1)) >= 0 ? 2 : 1;
        PitchClass tonic = PitchClass.parse(name.substring(0, root));
        return Optional.of(Arrays.stream(ChordKind.values())
                .filter(kind -> !kind.degrees().isEmpty() && kind.suffix().equals(name.substring(root)))
                .findFirst()
                .map(kind -> ChordSymbol.of(tonic, kind))
                .orElseThrow(() -> new NotationException("'" + name + "' is no plain chord")));
    }
}
