package org.fretgloss.annotator.slips;

import java.util.List;
import java.util.Optional;
import java.util.Random;

/** A sign that stands at the wrong note, or says what cannot be. */
final class SignSlips {

    /** What stands at the arrow of a bend, by semitones. */
    private static final List<String> WIDTHS = List.of("", "½", "full", "1½");

    private SignSlips() {}

    static Optional<Slip> impossibleBend(CleanScore score, int note, Random random) {
        return score.note(note).isPlain()
                ? Optional.of(Slip.at(score, note, score.note(note).withTechnical(bend(5 + random.nextInt(20), ""))))
                : Optional.empty();
    }

    /** The arrow says one width, the text beside it another. */
    static Optional<Slip> bendLabel(CleanScore score, int note, Random random) {
        int width = 1 + random.nextInt(3);
        int other = 1 + (width - 1 + 1 + random.nextInt(2)) % 3;
        return score.isFretted(note)
                ? Optional.of(Slip.at(
                                score,
                                note,
                                score.note(note)
                                        .withTechnical(bend(width, "") + "<other-technical>" + WIDTHS.get(other)
                                                + "</other-technical>"))
                        .saying("text beside the bend"))
                : Optional.empty();
    }

    /** A release in one of the ways in which programs write it, at a note that no bend comes before. */
    static Optional<Slip> releaseWithoutBend(CleanScore score, int note, Random random) {
        String height = List.of("-2", "2", "0", "-1").get(random.nextInt(4));
        boolean afterBend = note > 0 && score.note(note - 1).has("bend");
        return score.isFretted(note) && !afterBend
                ? Optional.of(Slip.at(score, note, score.note(note).withTechnical(bend(height, "<release/>")))
                        .saying("none was made"))
                : Optional.empty();
    }

    private static String bend(int semitones, String course) {
        return bend(String.valueOf(semitones), course);
    }

    private static String bend(String semitones, String course) {
        return "<bend><bend-alter>" + semitones + "</bend-alter>" + course + "</bend>";
    }

    static Optional<Slip> tieToAnotherNote(CleanScore score, int note, Random random) {
        int next = note + 1;
        return score.arePlainNeighbours(note, next)
                        && !score.note(note).midi().equals(score.note(next).midi())
                ? Optional.of(Slip.in(
                        score,
                        note,
                        score.with(
                                note,
                                score.note(note).withTie("start"),
                                next,
                                score.note(next).withTie("stop"))))
                : Optional.empty();
    }

    static Optional<Slip> tieToNowhere(CleanScore score, int note, Random random) {
        return score.isPlain(note)
                ? Optional.of(Slip.at(score, note, score.note(note).withTie("start")))
                : Optional.empty();
    }
}
