package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * How well a progression fits a solo from each of its bars: how many heard quarter notes fall on chord tones. Bars that lie
 * a whole progression apart always have the same chords, so they are summed first, under each of its different bars of
 * chords; a start is then weighed without going through the solo again.
 */
final class FormFit {

    private final List<List<Optional<ChordSymbol>>> chords;

    /** By a bar's index modulo the progression's length, then by its chords: what falls on chord tones. */
    private final List<Map<List<Optional<ChordSymbol>>, Fraction>> sums = new ArrayList<>();

    private FormFit(Progression progression) {
        this.chords = progression.bars();
    }

    static FormFit of(Solo solo, Progression progression) {
        FormFit fit = new FormFit(progression);
        List<List<Heard>> heard = heardByBar(solo);
        List<List<Optional<ChordSymbol>>> different =
                progression.bars().stream().distinct().toList();
        for (int i = 0; i < Math.min(solo.bars().size(), progression.bars().size()); i++) {
            fit.sums.add(new HashMap<>());
        }
        for (Bar bar : solo.bars()) {
            Map<List<Optional<ChordSymbol>>, Fraction> sum = fit.sums.get(bar.index() % fit.chords.size());
            for (List<Optional<ChordSymbol>> bars : different) {
                sum.merge(bars, onChords(bar, bars, heard.get(bar.index())), Fraction::plus);
            }
        }
        return fit;
    }

    /** Heard quarter notes of the whole solo that fall on chord tones, where the progression begins in a bar. */
    Fraction startingAt(int bar) {
        Fraction sum = Fraction.ZERO;
        for (int i = 0; i < sums.size(); i++) {
            Fraction there = sums.get(i).get(chords.get(Math.floorMod(i - bar, chords.size())));
            sum = there == null ? sum : sum.plus(there);
        }
        return sum;
    }

    /** For each bar what is heard in it, cut off at the bar's end. */
    private static List<List<Heard>> heardByBar(Solo solo) {
        List<List<Heard>> byBar = new ArrayList<>();
        solo.bars().forEach(bar -> byBar.add(new ArrayList<>()));
        solo.notes().stream().flatMap(note -> Heard.of(note).stream()).forEach(heard -> {
            int index = solo.barAt(heard.start()).index();
            while (index < solo.bars().size() && solo.bars().get(index).start().isLessThan(heard.end())) {
                byBar.get(index).add(heard);
                index++;
            }
        });
        return byBar;
    }

    private static Fraction onChords(Bar bar, List<Optional<ChordSymbol>> chords, List<Heard> heard) {
        Fraction sum = Fraction.ZERO;
        for (ChordSpan span : FormHarmony.shares(bar, chords)) {
            for (Heard note : heard) {
                sum = sum.plus(onChord(note, span));
            }
        }
        return sum;
    }

    private static Fraction onChord(Heard note, ChordSpan span) {
        boolean tone = span.chord().map(chord -> chord.contains(note.chroma())).orElse(false);
        Fraction shared = note.end().min(span.end()).minus(note.start().max(span.start()));
        return tone && shared.isPositive() ? shared : Fraction.ZERO;
    }
}
