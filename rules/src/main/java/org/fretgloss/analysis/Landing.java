package org.fretgloss.analysis;

import java.util.Optional;
import java.util.Set;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Where a phrase comes to rest. A bend that is let down rests where it is let down to.
 *
 * @param note the last note of the phrase that has a pitch and takes time
 * @param degree against the home tonic
 * @param chord the chord of the moment at which the note is struck
 * @param chordDegree against that chord's root, whether or not the chord holds it
 * @param chordBefore the chord that this one has just taken over from, within a beat of the note
 */
public record Landing(
        Note note,
        Degree degree,
        Optional<ChordSymbol> chord,
        Optional<Degree> chordDegree,
        Optional<ChordSymbol> chordBefore) {

    /** The tones that tell a chord from the one before. */
    private static final Set<String> TELLING = Set.of("3", "♭3", "♭7");

    /** The landing of a phrase; none where it has only dead and grace notes. */
    public static Optional<Landing> of(Analysis analysis, Phrase phrase) {
        return phrase.landing().map(note -> of(analysis, note));
    }

    private static Landing of(Analysis analysis, Note note) {
        int midi = note.endMidi();
        Optional<ChordSymbol> chord = analysis.chordAt(note);
        return new Landing(
                note,
                analysis.homeAt(note).scale().degreeOf(midi),
                chord,
                chord.map(symbol -> symbol.degreeAgainstRoot(Math.floorMod(midi, 12))),
                chordBefore(analysis.harmony(), note));
    }

    private static Optional<ChordSymbol> chordBefore(Harmony harmony, Note note) {
        Fraction beat = note.bar().meter().beatLength();
        return harmony.spanAt(note.onset())
                .filter(span -> !note.onset().minus(span.start()).isMoreThan(beat))
                .flatMap(span -> harmony.spanBefore(span)
                        .filter(before -> !before.chord().equals(span.chord()))
                        .flatMap(ChordSpan::chord));
    }

    /** Whether it makes a change of chord heard: on the third or ♭7 of a chord that has just come. */
    public boolean tellsChange() {
        return chordBefore.isPresent()
                && chordDegree.filter(tone -> TELLING.contains(tone.toString())).isPresent();
    }

    /** How much it rests: 3 on the home tonic, 2 on its fifth, 1 on its third, 0 on any other degree. */
    int rest() {
        return switch (degree.chroma()) {
            case 0 -> 3;
            case 7 -> 2;
            case 3, 4 -> 1;
            default -> 0;
        };
    }
}
