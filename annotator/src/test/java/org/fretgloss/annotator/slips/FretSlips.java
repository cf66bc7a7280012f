package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/** A string or a fret typed wrongly. */
final class FretSlips {

    private static final String STANDARD_TUNING = "[\"E4\",\"B3\",\"G3\",\"D3\",\"A2\",\"E2\"]";

    private FretSlips() {}

    /** The tab moves, the staff does not. */
    static Optional<Slip> tabOnly(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        int way = (1 + random.nextInt(6)) * (random.nextBoolean() ? 1 : -1);
        return score.isPlain(note) && written.fret().getAsInt() + way >= 0
                ? Optional.of(
                        Slip.ofFret(score, note, written.withFret(written.fret().getAsInt() + way)))
                : Optional.empty();
    }

    static Optional<Slip> octave(CleanScore score, int note, Random random) {
        if (!score.isFretted(note)) {
            return Optional.empty();
        }
        NoteText written = score.note(note);
        int fret = written.fret().getAsInt() + (written.fret().getAsInt() >= 12 ? -12 : 12);
        return fret <= 24 ? Optional.of(Slip.ofFret(score, note, written.withFret(fret))) : Optional.empty();
    }

    static Optional<Slip> offNeck(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        return score.isPlain(note)
                ? Optional.of(Slip.at(
                        score,
                        note,
                        switch (random.nextInt(3)) {
                            case 0 -> written.withFret(25 + random.nextInt(90));
                            case 1 -> written.withString(9 + random.nextInt(3));
                            default -> written.withFret(-1 - random.nextInt(3));
                        }))
                : Optional.empty();
    }

    /** Staff and tab agree about the wrong fret. */
    static Optional<Slip> oneFret(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        int way = random.nextBoolean() ? 1 : -1;
        return score.isFretted(note) && written.fret().getAsInt() + way >= 1
                ? Optional.of(Slip.ofFret(
                        score,
                        note,
                        written.withFret(written.fret().getAsInt() + way).transposed(way)))
                : Optional.empty();
    }

    /** The same pitch one or two strings away, where the hand has to jump for it. */
    static Optional<Slip> otherString(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        int string = written.string().orElse(0) + (1 + random.nextInt(2)) * (random.nextBoolean() ? 1 : -1);
        return score.isFretted(note)
                        && score.expected().get("tuning").toString().equals(STANDARD_TUNING)
                        && written.fretOnString(string).isPresent()
                        && makesTheHandJump(
                                score, note, written.fretOnString(string).getAsInt())
                ? Optional.of(Slip.at(
                        score,
                        note,
                        written.withFret(written.fretOnString(string).getAsInt())
                                .withString(string)))
                : Optional.empty();
    }

    /** Both neighbours of the bar lie by the note's own fret, and far from the other. */
    private static boolean makesTheHandJump(CleanScore score, int note, int other) {
        int fret = score.note(note).fret().orElseThrow();
        return Stream.of(note - 1, note + 1)
                .allMatch(neighbour -> score.sharesBar(note, neighbour)
                        && score.isFretted(neighbour)
                        && Math.abs(score.note(neighbour).fret().orElseThrow() - fret) <= 3
                        && Math.abs(score.note(neighbour).fret().orElseThrow() - other) >= 5);
    }
}
