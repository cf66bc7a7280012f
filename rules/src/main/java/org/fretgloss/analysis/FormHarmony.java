package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/** The chord of each moment from a form laid over the solo; the chords of a bar share it evenly. */
final class FormHarmony {

    private FormHarmony() {}

    static Harmony of(Solo solo, Form form) {
        List<ChordSpan> spans = new ArrayList<>();
        solo.bars().forEach(bar -> shares(bar, form).forEach(span -> ScoreHarmony.add(spans, span)));
        return new Harmony(Harmony.Source.GIVEN, spans);
    }

    private static List<ChordSpan> shares(Bar bar, Form form) {
        return shares(bar, form.progression().bars().get(form.placeOf(bar).bar() - 1));
    }

    /** The stretches of one bar that holds these chords. A short pick-up holds the end of its full bar. */
    static List<ChordSpan> shares(Bar bar, List<Optional<ChordSymbol>> chords) {
        Fraction fullStart = bar.start().minus(bar.lead());
        Fraction share = bar.end().minus(fullStart).times(Fraction.of(1, chords.size()));
        List<ChordSpan> spans = new ArrayList<>();
        for (int i = 0; i < chords.size(); i++) {
            Fraction start = fullStart.plus(share.times(i)).max(bar.start());
            Fraction end = fullStart.plus(share.times(i + 1L)).min(bar.end());
            if (start.isLessThan(end)) {
                spans.add(new ChordSpan(start, end, chords.get(i)));
            }
        }
        return spans;
    }
}
