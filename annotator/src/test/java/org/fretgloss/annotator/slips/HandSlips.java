package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.Random;

/** What no hand plays: strings and frets that a transcriber mixed up. */
final class HandSlips {

    /** Beats a minute, at which half a quarter note lasts an eighth of a second. */
    private static final int FAST = 240;

    private HandSlips() {}

    /** A double stop typed on one string. */
    static Optional<Slip> sameString(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        int way = 1 + random.nextInt(5);
        return score.isPlain(note)
                ? Optional.of(Slip.at(
                        score,
                        note,
                        new NoteText(written.text()
                                + written.withFret(written.fret().getAsInt() + way)
                                        .transposed(way)
                                        .asChordMember()
                                        .text())))
                : Optional.empty();
    }

    /** A double stop over nine frets. */
    static Optional<Slip> stretch(CleanScore score, int note, Random random) {
        NoteText written = score.note(note);
        int string = written.string().orElse(1) - 1;
        int fret = written.fret().orElse(0) + 9;
        boolean fits = score.isFretted(note)
                && string >= 1
                && fret <= 22
                && written.withString(string).fretOnString(string + 1).isPresent();
        return fits
                ? Optional.of(Slip.at(
                        score,
                        note,
                        new NoteText(written.text()
                                + written.withString(string)
                                        .withFret(fret)
                                        .transposed(9 + (string == 2 ? 4 : 5))
                                        .asChordMember()
                                        .text())))
                : Optional.empty();
    }

    /** Fourteen frets or more up the neck for one note, at a tempo that leaves an eighth of a second. */
    static Optional<Slip> shift(CleanScore score, int note, Random random) {
        int before = note - 1;
        boolean low = score.arePlainNeighbours(before, note)
                && score.isFretted(before)
                && score.note(before).fret().getAsInt() <= 6
                && 2 * score.note(before).duration().orElseThrow() <= score.divisions();
        if (!low || score.note(note).fret().getAsInt() > 12) {
            return Optional.empty();
        }
        int fret = score.note(before).fret().getAsInt() + 14 + random.nextInt(3);
        NoteText leapt = score.note(note)
                .withFret(fret)
                .transposed(fret - score.note(note).fret().getAsInt());
        NoteText fast = new NoteText(
                "<sound tempo=\"" + FAST + "\"/>" + score.note(before).text());
        return Optional.of(
                Slip.in(score, note, score.with(before, fast, note, leapt)).saying("no hand moves so fast"));
    }

    /** To another string, or to the same fret. */
    static Optional<Slip> legato(CleanScore score, int note, Random random) {
        int next = note + 1;
        return score.arePlainNeighbours(note, next)
                        && (!score.note(note).string().equals(score.note(next).string())
                                || score.note(note)
                                        .fret()
                                        .equals(score.note(next).fret()))
                ? Optional.of(hammered(score, note, score.note(next)))
                : Optional.empty();
    }

    /** Up the same string by eight frets or more. */
    static Optional<Slip> wideLegato(CleanScore score, int note, Random random) {
        int next = note + 1;
        int fret = score.note(note).fret().orElse(0) + 8 + random.nextInt(5);
        return score.arePlainNeighbours(note, next)
                        && score.isFretted(note)
                        && score.note(note).string().equals(score.note(next).string())
                        && fret <= 22
                ? Optional.of(hammered(
                                score,
                                note,
                                score.note(next)
                                        .transposed(
                                                fret - score.note(next).fret().orElseThrow())
                                        .withFret(fret))
                        .saying("more than a hand"))
                : Optional.empty();
    }

    private static Slip hammered(CleanScore score, int note, NoteText next) {
        return Slip.in(
                score,
                note,
                score.with(
                        note,
                        score.note(note).withTechnical("<hammer-on type=\"start\" number=\"1\">H</hammer-on>"),
                        note + 1,
                        next.withTechnical("<hammer-on type=\"stop\" number=\"1\"/>")));
    }
}
