package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;

/**
 * The slips that are planted: each into any note that it fits. Where a part has two staves that both tell the frets, a
 * slip on one of them is no slip for whoever reads the other; those are left out. So is the first bar, which may be
 * short.
 */
enum SlipKind {
    PITCH_AGAINST_FRET("pitch-against-fret", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int way = (1 + random.nextInt(6)) * (random.nextBoolean() ? 1 : -1);
            return onlyIf(written.isPlain()
                            && score.isOneStaff()
                            && written.fret().getAsInt() + way >= 0)
                    .map(yes -> Slip.ofFret(
                            score, note, written.withFret(written.fret().getAsInt() + way)));
        }
    },
    OCTAVE_FRET("octave-fret", false) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int fret = written.fret().orElse(0) + (written.fret().orElse(0) >= 13 ? -12 : 12);
            return onlyIf(written.isPlain()
                            && score.isOneStaff()
                            && written.fret().getAsInt() > 0
                            && fret <= 24)
                    .map(yes -> Slip.ofFret(score, note, written.withFret(fret)));
        }
    },
    OFF_NECK("off-neck", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            return onlyIf(written.isPlain() && score.isOneStaff())
                    .map(yes -> Slip.at(
                            score,
                            note,
                            switch (random.nextInt(3)) {
                                case 0 -> written.withFret(25 + random.nextInt(90));
                                case 1 -> written.withString(9 + random.nextInt(3));
                                default -> written.withFret(-1 - random.nextInt(3));
                            }));
        }
    },
    SAME_STRING("same-string", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int way = 1 + random.nextInt(5);
            return onlyIf(written.isPlain() && score.isOneStaff())
                    .map(yes -> Slip.at(
                            score,
                            note,
                            new NoteText(written.text()
                                    + written.withFret(written.fret().getAsInt() + way)
                                            .transposed(way)
                                            .asChordMember()
                                            .text())));
        }
    },
    BAR_LENGTH("bar-length", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            return onlyIf(written.duration().isPresent()
                            && score.isOneStaff()
                            && !written.has("chord")
                            && written.fret().isPresent()
                            && !score.bars().get(note).equals(score.bars().get(0)))
                    .map(yes -> Slip.at(
                            score,
                            note,
                            random.nextBoolean()
                                    ? new NoteText("")
                                    : written.withDuration(
                                            2 * written.duration().getAsInt())));
        }
    },
    BEND_WIDTH("bend-width", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            return onlyIf(written.isPlain())
                    .map(yes -> Slip.at(
                            score,
                            note,
                            written.withTechnical(
                                    "<bend><bend-alter>" + (5 + random.nextInt(20)) + "</bend-alter></bend>")));
        }
    },
    LEGATO("legato", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            int next = note + 1;
            return onlyIf(arePlainNeighbours(score, note, next)
                            && (!score.note(note)
                                            .string()
                                            .equals(score.note(next).string())
                                    || score.note(note)
                                            .fret()
                                            .equals(score.note(next).fret())))
                    .map(yes -> new Slip(
                            score,
                            score.with(
                                    note,
                                    score.note(note)
                                            .withTechnical("<hammer-on type=\"start\" number=\"1\">H</hammer-on>"),
                                    next,
                                    score.note(next).withTechnical("<hammer-on type=\"stop\" number=\"1\"/>")),
                            score.bars().get(note),
                            OptionalInt.empty()));
        }
    },
    TIE_TO_ANOTHER_NOTE("tie", true) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            int next = note + 1;
            return onlyIf(arePlainNeighbours(score, note, next)
                            && !score.note(note).midi().equals(score.note(next).midi()))
                    .map(yes -> new Slip(
                            score,
                            score.with(
                                    note,
                                    score.note(note).withTie("start"),
                                    next,
                                    score.note(next).withTie("stop")),
                            score.bars().get(note),
                            OptionalInt.empty()));
        }
    },
    TIE_TO_NOWHERE("tie", false) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            return onlyIf(score.isOneStaff() && score.note(note).isPlain())
                    .map(yes -> Slip.at(score, note, score.note(note).withTie("start")));
        }
    },
    STRETCH("reach-and-shift", false) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int string = written.string().orElse(1) - 1;
            int fret = written.fret().orElse(0) + 9;
            return onlyIf(written.isPlain()
                            && score.isOneStaff()
                            && string >= 1
                            && written.fret().getAsInt() > 0
                            && fret <= 22)
                    .flatMap(yes ->
                            written.withString(string).fretOnString(string + 1).isPresent()
                                    ? Optional.of(Slip.at(
                                            score,
                                            note,
                                            new NoteText(written.text()
                                                    + written.withString(string)
                                                            .withFret(fret)
                                                            .transposed(9 + (string == 2 ? 4 : 5))
                                                            .asChordMember()
                                                            .text())))
                                    : Optional.empty());
        }
    },
    WRONG_BOX("wrong-box", false) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int way = random.nextBoolean() ? 1 : -1;
            return onlyIf(written.isPlain()
                            && score.isOneStaff()
                            && written.fret().getAsInt() + way >= 1
                            && written.fret().getAsInt() > 0)
                    .map(yes -> Slip.ofFret(
                            score,
                            note,
                            written.withFret(written.fret().getAsInt() + way).transposed(way)));
        }
    },
    LIKELY_STRING("likely-string", false) {
        @Override
        Optional<Slip> plant(CleanScore score, int note, Random random) {
            NoteText written = score.note(note);
            int string = written.string().orElse(0) + (random.nextBoolean() ? 1 : -1);
            return onlyIf(written.isPlain()
                            && score.isOneStaff()
                            && score.expected()
                                    .get("tuning")
                                    .toString()
                                    .equals("[\"E4\",\"B3\",\"G3\",\"D3\",\"A2\",\"E2\"]")
                            && written.fret().getAsInt() > 0
                            && written.fretOnString(string).isPresent()
                            && makesTheHandJump(
                                    score, note, written.fretOnString(string).getAsInt()))
                    .map(yes -> Slip.at(
                            score,
                            note,
                            written.withFret(written.fretOnString(string).getAsInt())
                                    .withString(string)));
        }
    };

    private final String check;
    private final boolean isError;

    SlipKind(String check, boolean isError) {
        this.check = check;
        this.isError = isError;
    }

    /** The check that should find it. */
    String check() {
        return check;
    }

    /** Whether it cannot be right, so that nearly all must be found. */
    boolean isError() {
        return isError;
    }

    /** The slip on that note; none where it does not fit there. */
    abstract Optional<Slip> plant(CleanScore score, int note, Random random);

    /** Both neighbours of the bar lie by the note's own fret, and far from the other. */
    private static boolean makesTheHandJump(CleanScore score, int note, int other) {
        int fret = score.note(note).fret().orElseThrow();
        return Stream.of(note - 1, note + 1)
                .allMatch(neighbour -> neighbour >= 0
                        && neighbour < score.notes().size()
                        && score.bars().get(neighbour).equals(score.bars().get(note))
                        && score.note(neighbour).isPlain()
                        && score.note(neighbour).fret().orElseThrow() > 0
                        && Math.abs(score.note(neighbour).fret().orElseThrow() - fret) <= 3
                        && Math.abs(score.note(neighbour).fret().orElseThrow() - other) >= 5);
    }

    private static boolean arePlainNeighbours(CleanScore score, int note, int next) {
        return score.isOneStaff()
                && next < score.notes().size()
                && score.bars().get(note).equals(score.bars().get(next))
                && score.note(note).isPlain()
                && score.note(next).isPlain();
    }

    private static Optional<Boolean> onlyIf(boolean fits) {
        return fits ? Optional.of(true) : Optional.empty();
    }
}
