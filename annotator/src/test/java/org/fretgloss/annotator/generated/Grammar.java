package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.annotator.generated.Bar.Meter;
import org.fretgloss.annotator.generated.Tone.Mark;

/** Makes music up: bars of cells of a beat or two, of single notes, double stops, graces, ties, bends and legato. */
final class Grammar {

    static final int QUARTER = 12;

    private static final List<Integer> FRETS = List.of(5, 7, 8, 9, 10, 12);
    private static final List<Meter> METERS = List.of(
            new Meter(4, 4), new Meter(3, 4), new Meter(6, 8), new Meter(12, 8), new Meter(5, 4), new Meter(7, 8));

    private final Dice dice;
    private final BendDialect dialect;

    /** The note at the end of the bar before that is tied to the first of the next. */
    private Optional<Tone> tied = Optional.empty();

    Grammar(Dice dice) {
        this.dice = dice;
        this.dialect = new BendDialect(dice);
    }

    /** The bars of a solo, perhaps with a pick-up. */
    List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        Meter meter = dice.oneOf(METERS);
        if (dice.has(Feature.PICK_UP)) {
            bars.add(new Bar(meter, true, 0, bar(QUARTER)));
        }
        for (int left = 2 + dice.below(3); left > 0; left--) {
            boolean changes = !bars.isEmpty() && dice.has(Feature.METER_CHANGE, 2);
            if (changes) {
                meter = dice.oneOf(METERS);
            }
            bars.add(new Bar(meter, changes || bars.isEmpty(), 0, bar(meter.length())));
            bars.addAll(rests(meter));
        }
        bars.add(new Bar(meter, false, 0, List.of(tiedFromBefore().orElse(Tone.note(QUARTER, 3, 7)))));
        return bars;
    }

    private Optional<Tone> tiedFromBefore() {
        Optional<Tone> stop = tied.map(tone -> Tone.note(QUARTER, tone.string(), tone.fret(), Mark.TIE_STOP));
        tied = Optional.empty();
        return stop;
    }

    private List<Bar> rests(Meter meter) {
        List<Tone> rest = List.of(Tone.rest(meter.length(), Mark.WHOLE_BAR));
        if (dice.has(Feature.MULTI_BAR_REST, 2)) {
            return List.of(new Bar(meter, false, 2, rest), new Bar(meter, false, 0, rest));
        }
        return dice.has(Feature.BAR_REST, 2) ? List.of(new Bar(meter, false, 0, rest)) : List.of();
    }

    static int length(List<Tone> tones) {
        return tones.stream()
                .filter(tone -> !tone.has(Mark.CHORD))
                .mapToInt(Tone::length)
                .sum();
    }

    /** One bar that fills a length given in twelfths of a quarter note. */
    private List<Tone> bar(int length) {
        List<Tone> tones = new ArrayList<>();
        tiedFromBefore().ifPresent(tones::add);
        while (length(tones) < length) {
            tones.addAll(cell(length - length(tones)));
        }
        tieOver(tones);
        return tones;
    }

    private void tieOver(List<Tone> tones) {
        int last = tones.size() - 1;
        Tone tone = tones.get(last);
        if (tone.isPlain() && dice.has(Feature.TIE_OVER_BAR_LINE)) {
            tones.set(last, tone.with(Mark.TIE_START));
            tied = Optional.of(tone);
        } else if (tone.isPlain() && dice.has(Feature.TIE_WITHOUT_END, 2)) {
            tones.set(last, tone.with(Mark.TIE_START));
        }
    }

    private List<Tone> cell(int left) {
        if (left < QUARTER) {
            return List.of(note(left));
        }
        return switch (dice.below(left >= 2 * QUARTER ? 12 : 10)) {
            case 0 -> List.of(rest());
            case 1 -> List.of(note(QUARTER).bent(dialect.course()));
            case 2 -> pair(Mark.HAMMER_START, Mark.HAMMER_STOP, 7, 9);
            case 3 -> pair(Mark.PULL_START, Mark.PULL_STOP, 8, 5);
            case 4 -> pair(Mark.SLIDE_START, Mark.SLIDE_STOP, 7, 9);
            case 5 -> triplet();
            case 6 -> doubleStop();
            case 7 -> List.of(note(0), note(QUARTER));
            case 8 -> List.of(note(6), note(3), note(3));
            case 9 -> List.of(oddity());
            case 10 -> tied();
            default -> List.of(note(2 * QUARTER).with(dice.oneOf(List.of(Mark.VIBRATO, Mark.HARMONIC))));
        };
    }

    private Tone rest() {
        if (dice.has(Feature.FORWARD, 2)) {
            return Tone.rest(QUARTER, Mark.FORWARD);
        }
        return dice.has(Feature.HIDDEN_REST, 2) ? Tone.rest(QUARTER, Mark.HIDDEN) : Tone.rest(QUARTER);
    }

    /** A note that is more or less than one. */
    private Tone oddity() {
        Tone note = note(QUARTER);
        if (dice.has(Feature.CUE)) {
            return note.with(Mark.CUE);
        }
        if (dice.has(Feature.UNPITCHED)) {
            return note.with(Mark.UNPITCHED);
        }
        if (dice.has(Feature.DEAD_NOTE)) {
            return note.with(Mark.DEAD);
        }
        return dice.has(Feature.TAP) ? note.with(Mark.TAP) : note;
    }

    private List<Tone> pair(Mark start, Mark stop, int first, int second) {
        int string = 1 + dice.below(4);
        return List.of(Tone.note(6, string, first, start), Tone.note(6, string, second, stop));
    }

    private List<Tone> triplet() {
        int string = 1 + dice.below(5);
        return List.of(
                Tone.note(4, string, 8).inTriplet(1),
                Tone.note(4, string, 5).inTriplet(2),
                Tone.note(4, string + 1, 7).inTriplet(3));
    }

    private List<Tone> doubleStop() {
        int string = 1 + dice.below(4);
        return List.of(Tone.note(QUARTER, string + 1, 7), Tone.note(QUARTER, string, 8, Mark.CHORD));
    }

    private List<Tone> tied() {
        Tone first = note(QUARTER);
        Tone second = Tone.note(QUARTER, first.string(), first.fret(), Mark.TIE_STOP);
        if (dice.has(Feature.BENDS_RESTATED_ON_TIES)) {
            List<Bend> course = dialect.course();
            return List.of(first.with(Mark.TIE_START).bent(course), second.bent(course));
        }
        return List.of(first.with(Mark.TIE_START), second);
    }

    private Tone note(int length) {
        return Tone.note(length, 1 + dice.below(6), dice.oneOf(FRETS));
    }
}
