package org.fretgloss.pitch;

import java.util.List;
import java.util.Locale;

/**
 * A chord's Roman numeral against a tonic. It tells root and third only, in small letters where the third is minor: in
 * A, D7 is IV, Bm7 is ii and F is ♭VI.
 *
 * <p>Roots between the degrees are named as lowered ones (♭II, ♭III, ♭V, ♭VI, ♭VII) but where a diminished chord on its
 * way up is spelled with a raised one: D♯°7 in A is ♯iv. Common practice, no source.
 */
public final class Numeral {

    private static final List<String> CAPITALS = List.of("I", "II", "III", "IV", "V", "VI", "VII");

    private Numeral() {}

    public static String of(ChordSymbol chord, PitchClass tonic) {
        Degree spelled = tonic.degreeOf(chord.root());
        boolean raised = spelled.alteration() == 1 && isDiminished(chord);
        Degree degree = raised ? spelled : Degree.named(tonic.semitonesUpTo(chord.root()));
        String capitals = CAPITALS.get(degree.number() - 1);
        return Accidentals.of(degree.alteration())
                + (chord.hasMinorThird() ? capitals.toLowerCase(Locale.ROOT) : capitals);
    }

    private static boolean isDiminished(ChordSymbol chord) {
        int root = chord.root().chroma();
        return chord.hasMinorThird() && chord.contains(root + 6) && !chord.contains(root + 7);
    }
}
