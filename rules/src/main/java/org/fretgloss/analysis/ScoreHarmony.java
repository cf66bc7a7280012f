package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fretgloss.solo.ChordMark;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/** The chord of each moment from the score's chord symbols: each in force until the next one or "no chord". */
final class ScoreHarmony {

    private ScoreHarmony() {}

    static Harmony of(Solo solo) {
        List<ChordMark> marks = solo.chords();
        if (marks.stream().allMatch(mark -> mark.chord().isEmpty())) {
            return Harmony.UNKNOWN;
        }
        List<ChordSpan> spans = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            Fraction start = marks.get(i).onset();
            Fraction end =
                    i + 1 < marks.size() ? marks.get(i + 1).onset() : solo.end().max(start);
            if (start.isLessThan(end)) {
                add(spans, new ChordSpan(start, end, marks.get(i).chord()));
            }
        }
        return new Harmony(Harmony.Source.SCORE, spans);
    }

    /** The same symbol written again is no chord change. */
    static void add(List<ChordSpan> spans, ChordSpan next) {
        ChordSpan last = spans.isEmpty() ? next : spans.get(spans.size() - 1);
        if (!spans.isEmpty() && last.chord().equals(next.chord()) && last.end().equals(next.start())) {
            spans.set(spans.size() - 1, new ChordSpan(last.start(), next.end(), last.chord()));
        } else {
            spans.add(next);
        }
    }
}
