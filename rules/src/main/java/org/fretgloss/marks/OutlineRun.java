package org.fretgloss.marks;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.Scale;
import org.fretgloss.solo.Note;

/**
 * Tones of one chord in a row, with at most one passing note among them.
 *
 * @param chord the chord
 * @param tones at least one; the first and the last are tones of the chord
 */
record OutlineRun(ChordSymbol chord, List<Tone> tones) {

    private static final int DIFFERENT_TONES = 3;
    private static final int THIRD = 3;

    /** How many notes of the home pentatonic a chord holds where playing the pentatonic already sounds like it. */
    private static final int MOSTLY_PENTATONIC = 4;

    /**
     * A pitch struck once, or several times at once.
     *
     * @param first the note that strikes it first
     * @param last the note that strikes it last
     * @param midi MIDI number it is heard at
     * @param degree its name in the chord; none for a note outside it
     */
    record Tone(Note first, Note last, int midi, Optional<Degree> degree) {

        static Tone of(Note note, ChordSymbol chord) {
            int midi = note.heardMidi();
            return new Tone(note, note, midi, chord.degreeOf(Math.floorMod(midi, 12)));
        }

        Tone until(Note again) {
            return new Tone(first, again, midi, degree);
        }

        /** Semitones to another tone, up or down. */
        int leapTo(Tone next) {
            return Math.abs(next.midi - midi);
        }
    }

    OutlineRun {
        tones = List.copyOf(tones);
    }

    Note first() {
        return tones.get(0).first();
    }

    Note last() {
        return tones.get(tones.size() - 1).last();
    }

    /** The degrees of the chord, in order. */
    List<Degree> degrees() {
        return tones.stream().flatMap(tone -> tone.degree().stream()).toList();
    }

    Optional<Note> passingNote() {
        return tones.stream()
                .filter(tone -> tone.degree().isEmpty())
                .map(Tone::first)
                .findFirst();
    }

    /**
     * Whether the run tells the chord from others: three different tones with the defining one among them, and, where the
     * home pentatonic holds most of the chord anyway, two leaps in a row.
     *
     * @param tonic the home tonic
     * @param pentatonic the pentatonic of the home
     */
    boolean outlines(PitchClass tonic, Scale pentatonic) {
        List<Integer> sounded =
                degrees().stream().map(Degree::chroma).distinct().toList();
        return sounded.size() >= DIFFERENT_TONES
                && sounded.contains(chord.definingTone().chroma())
                && (!isMostlyIn(tonic, pentatonic) || hasTwoLeapsInARow());
    }

    private boolean isMostlyIn(PitchClass tonic, Scale pentatonic) {
        return pentatonic.notes(tonic).stream()
                        .filter(note -> chord.contains(note.chroma()))
                        .count()
                >= MOSTLY_PENTATONIC;
    }

    private boolean hasTwoLeapsInARow() {
        return IntStream.range(2, tones.size()).anyMatch(i -> isLeap(i - 1) && isLeap(i));
    }

    private boolean isLeap(int i) {
        Tone from = tones.get(i - 1);
        Tone to = tones.get(i);
        return from.degree().isPresent() && to.degree().isPresent() && from.leapTo(to) >= THIRD;
    }
}
