package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.HarmonyType;
import org.fretgloss.annotator.read.ChordReader.Named;
import org.fretgloss.annotator.read.ChordReader.NoChord;
import org.fretgloss.neck.Tuning;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.ChordMark;
import org.fretgloss.time.Fraction;

/** The score's chord symbols: the solo part's own, or else those of the part that has most. */
final class ChordMarks {

    private ChordMarks() {}

    /** The marks in order of onset, one for each moment. */
    static List<ChordMark> read(Timeline solo, List<Timeline> parts, List<Bar> bars, Tuning tuning, Notices notices) {
        List<ChordMark> own = of(solo, bars, tuning, notices);
        if (chords(own) > 0) {
            return own;
        }
        Notices unread = new Notices();
        return parts.stream()
                .map(part -> of(part, bars, tuning, unread))
                .filter(marks -> chords(marks) > 0)
                .max(Comparator.comparingLong(ChordMarks::chords))
                .orElse(own);
    }

    private static long chords(List<ChordMark> marks) {
        return marks.stream().filter(mark -> mark.chord().isPresent()).count();
    }

    private static List<ChordMark> of(Timeline part, List<Bar> bars, Tuning tuning, Notices notices) {
        List<ChordMark> marks = new ArrayList<>();
        for (Placed<Harmony> placed : part.harmonies()) {
            if (placed.bar() < bars.size() && placed.item().getType() != HarmonyType.ALTERNATE) {
                Bar bar = bars.get(placed.bar());
                Fraction onset = bar.start().plus(placed.at()).max(Fraction.ZERO);
                ChordReader.Reading reading = ChordReader.read(placed.item(), tuning, bar.key());
                if (reading instanceof Named named) {
                    marks.add(new ChordMark(onset, Optional.of(named.chord())));
                } else if (reading instanceof NoChord none) {
                    none.why().ifPresent(why -> notices.say(why, bar.number()));
                    marks.add(new ChordMark(onset, Optional.empty()));
                }
            }
        }
        marks.addAll(wordedRests(part, bars));
        return inOrder(marks);
    }

    /** "N.C." written as words over the staff. */
    private static List<ChordMark> wordedRests(Timeline part, List<Bar> bars) {
        return part.directions().stream()
                .filter(placed -> placed.bar() < bars.size() && saysNoChord(placed.item()))
                .map(placed -> new ChordMark(
                        bars.get(placed.bar()).start().plus(placed.at()).max(Fraction.ZERO), Optional.empty()))
                .toList();
    }

    private static boolean saysNoChord(Direction direction) {
        return direction.getDirectionType().stream()
                .flatMap(type -> type.getWordsOrSymbol().stream())
                .filter(FormattedTextId.class::isInstance)
                .anyMatch(words -> PlayingWords.saysNoChord(((FormattedTextId) words).getValue()));
    }

    /** Where two stand at one moment, as over two staves, the first in the document counts. */
    private static List<ChordMark> inOrder(List<ChordMark> marks) {
        List<ChordMark> ordered = new ArrayList<>();
        marks.stream().sorted(Comparator.comparing(ChordMark::onset)).forEach(mark -> {
            boolean taken = !ordered.isEmpty()
                    && ordered.get(ordered.size() - 1).onset().equals(mark.onset());
            if (!taken) {
                ordered.add(mark);
            }
        });
        return ordered;
    }
}
