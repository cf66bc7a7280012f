package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Bar;
import org.fretgloss.time.Fraction;

/**
 * What another part plays under a solo, from which chords can be inferred where no symbols say them.
 *
 * @param notes what sounds, in order of onset
 */
public record Accompaniment(List<Sounding> notes) {

    /** A guess less sure than this is none. */
    private static final double SURE_ENOUGH = 0.5;

    private static final Fraction HALF = Fraction.of(1, 2);

    /**
     * A pitch that sounds.
     *
     * @param midi MIDI number
     * @param start quarter notes from the start of the part
     * @param end quarter notes from the start of the part
     */
    public record Sounding(int midi, Fraction start, Fraction end) {}

    public Accompaniment {
        notes = List.copyOf(notes);
    }

    /**
     * Names the chord of each bar, or of each half where the halves are sure and differ. Where a bar says nothing, the chord
     * before it goes on; before the first that is sure there is none.
     *
     * @param bars the solo's bars
     * @return chords marked as inferred; {@link Harmony#UNKNOWN} where no bar names one
     */
    public Harmony infer(List<Bar> bars) {
        List<ChordSpan> spans = new ArrayList<>();
        Optional<ChordSymbol> inForce = Optional.empty();
        List<Sounding> within = new ArrayList<>();
        int next = 0;
        for (Bar bar : bars) {
            within.removeIf(note -> !note.end().isMoreThan(bar.start()));
            while (next < notes.size() && notes.get(next).start().isLessThan(bar.end())) {
                within.add(notes.get(next++));
            }
            for (ChordSpan span : chords(bar, within)) {
                Optional<ChordSymbol> before = inForce;
                inForce = span.chord().or(() -> before);
                ScoreHarmony.add(spans, new ChordSpan(span.start(), span.end(), inForce));
            }
        }
        return inForce.isEmpty() ? Harmony.UNKNOWN : new Harmony(Harmony.Source.INFERRED, spans);
    }

    /** One span, or two where the halves of the bar plainly have chords of their own. */
    private static List<ChordSpan> chords(Bar bar, List<Sounding> notes) {
        Fraction middle = bar.start().plus(bar.length().times(HALF));
        Blend firstHalf = Blend.of(notes, bar.start(), middle);
        Blend secondHalf = Blend.of(notes, middle, bar.end());
        Optional<ChordSymbol> first = firstHalf.chord();
        Optional<ChordSymbol> second = secondHalf.chord();
        // The same chord, picked in another order, may look like two.
        boolean isOneChord = firstHalf.isWithin(secondHalf) || secondHalf.isWithin(firstHalf);
        if (first.isPresent() && second.isPresent() && !first.equals(second) && !isOneChord) {
            return List.of(new ChordSpan(bar.start(), middle, first), new ChordSpan(middle, bar.end(), second));
        }
        Optional<ChordSymbol> whole =
                Blend.of(notes, bar.start(), bar.end()).chord().or(() -> first).or(() -> second);
        return List.of(new ChordSpan(bar.start(), bar.end(), whole));
    }

    /**
     * What sounds in a stretch, taken together.
     *
     * @param durations by chroma, twelve: how long it sounds
     * @param bass the chroma of the lowest note
     */
    private record Blend(List<Double> durations, OptionalInt bass) {

        static Blend of(List<Sounding> notes, Fraction start, Fraction end) {
            List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
            OptionalInt lowest = OptionalInt.empty();
            for (Sounding note : notes) {
                double shared =
                        note.end().min(end).minus(note.start().max(start)).toDouble();
                if (shared > 0) {
                    int chroma = Math.floorMod(note.midi(), 12);
                    durations.set(chroma, durations.get(chroma) + shared);
                    lowest = OptionalInt.of(Math.min(note.midi(), lowest.orElse(note.midi())));
                }
            }
            return new Blend(
                    durations,
                    lowest.stream().map(midi -> Math.floorMod(midi, 12)).findFirst());
        }

        /** Whether it brings no pitch class that another lacks. */
        boolean isWithin(Blend other) {
            return IntStream.range(0, 12)
                    .allMatch(chroma -> durations.get(chroma) == 0 || other.durations.get(chroma) > 0);
        }

        Optional<ChordSymbol> chord() {
            return ChordGuess.of(durations, bass)
                    .filter(guess -> guess.confidence() >= SURE_ENOUGH)
                    .map(ChordGuess::chord);
        }
    }
}
