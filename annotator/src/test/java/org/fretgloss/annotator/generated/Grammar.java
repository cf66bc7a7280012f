package org.fretgloss.annotator.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.fretgloss.annotator.generated.Tone.Mark;

/** Makes bars of guitar music up: cells of a beat or two, of single notes, double stops, graces, ties, bends and legato. */
final class Grammar {

    static final int QUARTER = 12;

    private static final int[] FRETS = {5, 7, 8, 9, 10, 12};

    private final RandomGenerator random;

    Grammar(RandomGenerator random) {
        this.random = random;
    }

    /** One bar that fills a length given in twelfths of a quarter note. */
    List<Tone> bar(int length) {
        List<Tone> tones = new ArrayList<>();
        int left = length;
        while (left > 0) {
            List<Tone> cell = cell(left);
            tones.addAll(cell);
            left -= cell.stream()
                    .filter(tone -> !tone.has(Mark.CHORD))
                    .mapToInt(Tone::length)
                    .sum();
        }
        return tones;
    }

    private List<Tone> cell(int left) {
        if (left < QUARTER) {
            return List.of(note(left, List.of()));
        }
        return switch (random.nextInt(left >= 2 * QUARTER ? 11 : 9)) {
            case 0 -> List.of(Tone.rest(QUARTER));
            case 1 -> List.of(note(QUARTER, List.of(bend())));
            case 2 -> pair(Mark.HAMMER_START, Mark.HAMMER_STOP, 7, 9);
            case 3 -> pair(Mark.PULL_START, Mark.PULL_STOP, 8, 5);
            case 4 -> pair(Mark.SLIDE_START, Mark.SLIDE_STOP, 7, 9);
            case 5 -> triplet();
            case 6 -> doubleStop();
            case 7 -> List.of(grace(), note(QUARTER, List.of()));
            case 8 -> List.of(note(6, List.of()), note(3, List.of()), note(3, List.of()));
            case 9 -> tied();
            default -> List.of(note(2 * QUARTER, List.of(random.nextBoolean() ? Mark.VIBRATO : Mark.HARMONIC)));
        };
    }

    private List<Tone> pair(Mark start, Mark stop, int first, int second) {
        int string = 1 + random.nextInt(4);
        return List.of(new Tone(6, string, first, 0, List.of(start)), new Tone(6, string, second, 0, List.of(stop)));
    }

    private List<Tone> triplet() {
        int string = 1 + random.nextInt(5);
        return List.of(
                new Tone(4, string, 8, 1, List.of()),
                new Tone(4, string, 5, 2, List.of()),
                new Tone(4, string + 1, 7, 3, List.of()));
    }

    private List<Tone> doubleStop() {
        int string = 1 + random.nextInt(4);
        return List.of(
                new Tone(QUARTER, string + 1, 7, 0, List.of()), new Tone(QUARTER, string, 8, 0, List.of(Mark.CHORD)));
    }

    private List<Tone> tied() {
        Tone first = note(QUARTER, List.of(Mark.TIE_START));
        return List.of(first, new Tone(QUARTER, first.string(), first.fret(), 0, List.of(Mark.TIE_STOP)));
    }

    private Tone grace() {
        return note(0, List.of());
    }

    private Tone note(int length, List<Mark> marks) {
        return new Tone(length, 1 + random.nextInt(6), FRETS[random.nextInt(FRETS.length)], 0, marks);
    }

    private Mark bend() {
        return List.of(Mark.BEND, Mark.BEND_RELEASE, Mark.BEND_TO_HEIGHT, Mark.PRE_BEND, Mark.BAR_DIP)
                .get(random.nextInt(5));
    }
}
