package org.fretgloss.annotator.slips;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A solo played through twice, in whose second round one note differs: a lick that was copied, and typed over once. */
final class RepeatSlip {

    private static final Pattern BAR_NUMBER = Pattern.compile("(<measure\\b[^>]*number=\")(\\d+)\"");

    /** Notes on either side that keep a slip away from the beginning and the ending of a phrase, which may be varied. */
    private static final int INSIDE = 2;

    private RepeatSlip() {}

    static Optional<Slip> plant(CleanScore score, int note, Random random) {
        boolean fits = score.isFretted(note)
                && score.isOnePart()
                && !score.text().contains("implicit=\"yes\"")
                && IntStream.rangeClosed(note - INSIDE, note + INSIDE).allMatch(score::isStruck);
        if (!fits) {
            return Optional.empty();
        }
        return random.nextBoolean() ? otherFret(score, note, random) : otherLength(score, note);
    }

    private static Optional<Slip> otherFret(CleanScore score, int note, Random random) {
        int way = (1 + random.nextInt(3)) * (random.nextBoolean() ? 1 : -1);
        NoteText written = score.note(note);
        int fret = written.fret().getAsInt() + way;
        return fret < 1
                ? Optional.empty()
                : Optional.of(twice(
                        score, note, score.with(note, written.withFret(fret).transposed(way)), written.fret()));
    }

    /** It takes half of the next note's length. */
    private static Optional<Slip> otherLength(CleanScore score, int note) {
        NoteText next = score.note(note + 1);
        int lent = next.duration().orElse(0) / 2;
        boolean fits = score.arePlainNeighbours(note, note + 1)
                && lent > 0
                && next.duration().getAsInt() % 2 == 0;
        return fits
                ? Optional.of(twice(
                        score,
                        note,
                        score.with(
                                note,
                                score.note(note)
                                        .withDuration(
                                                score.note(note).duration().getAsInt() + lent),
                                note + 1,
                                next.withDuration(lent)),
                        OptionalInt.empty()))
                : Optional.empty();
    }

    private static Slip twice(CleanScore score, int note, String slipped, OptionalInt fret) {
        String clean = score.text();
        int bars = score.times().bars().size() - 1;
        String second = bars(slipped);
        Matcher number = BAR_NUMBER.matcher(second);
        second = number.replaceAll(bar -> bar.group(1) + (Integer.parseInt(bar.group(2)) + bars) + "\"");
        int end = clean.lastIndexOf("</measure>") + "</measure>".length();
        return new Slip(
                score,
                clean.substring(0, end) + second + clean.substring(end),
                Optional.of(String.valueOf(Integer.parseInt(score.bars().get(note)) + bars)),
                fret,
                Optional.empty());
    }

    private static String bars(String text) {
        return text.substring(text.indexOf("<measure "), text.lastIndexOf("</measure>") + "</measure>".length());
    }
}
