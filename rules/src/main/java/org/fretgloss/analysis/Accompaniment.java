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
        Optional<ChordSymbol> first = guess(notes, bar.start(), middle);
        Optional<ChordSymbol> second = guess(notes, middle, bar.end());
        boolean isOneChord = isWithin(notes, bar.start(), middle, middle, bar.end())
                || isWithin(notes, middle, bar.end(), bar.start(), middle);
        if (first.isPresent() && second.isPresent() && !first.equals(second) && !isOneChord) {
            return List.of(new ChordSpan(bar.start(), middle, first), new ChordSpan(middle, bar.end(), second));
        }
        Optional<ChordSymbol> whole =
                guess(notes, bar.start(), bar.end()).or(() -> first).or(() -> second);
        return List.of(new ChordSpan(bar.start(), bar.end(), whole));
    }

    /** Whether one half brings no pitch class that the other lacks: the same chord, picked in another order. */
    private static boolean isWithin(
            List<Sounding> notes, Fraction start, Fraction end, Fraction otherStart, Fraction otherEnd) {
        List<Double> other = durations(notes, otherStart, otherEnd);
        List<Double> half = durations(notes, start, end);
        return IntStream.range(0, 12).allMatch(chroma -> half.get(chroma) == 0 || other.get(chroma) > 0);
    }

    /** How long each pitch class sounds in a stretch, by chroma. */
    private static List<Double> durations(List<Sounding> notes, Fraction start, Fraction end) {
        List<Double> durations = new ArrayList<>(Collections.nCopies(12, 0.0));
        for (Sounding note : notes) {
            int chroma = Math.floorMod(note.midi(), 12);
            durations.set(chroma, durations.get(chroma) + shared(note, start, end));
        }
        return durations;
    }

    private static double shared(Sounding note, Fraction start, Fraction end) {
        return Math.max(0, note.end().min(end).minus(note.start().max(start)).toDouble());
    }

    private static Optional<ChordSymbol> guess(List<Sounding> notes, Fraction start, Fraction end) {
        OptionalInt lowest = notes.stream()
                .filter(note -> shared(note, start, end) > 0)
                .mapToInt(Sounding::midi)
                .min();
        OptionalInt bass = lowest.isPresent() ? OptionalInt.of(Math.floorMod(lowest.getAsInt(), 12)) : lowest;
        return ChordGuess.of(durations(notes, start, end), bass)
                .filter(guess -> guess.confidence() >= SURE_ENOUGH)
                .map(ChordGuess::chord);
    }
}
